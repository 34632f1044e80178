/**
 * Widths of the letters of the sans serif that every reader of a PDF has, in thousandths of the
 * type size: those of the ASCII range and of the signs that a decomposition does not lead to.
 *
 * @source the width tables of the PDF standard's fonts (ISO 32000-1, 9.6.2.2), from memory, checked
 *   against an open font of the same widths in a browser and against a PDF reader's own tables
 */
const PLAIN: readonly (readonly [number, string])[] = [
  [191, "'"],
  [222, "ijl‚‘’"],
  [260, "|¦"],
  [278, " !,./:;I[\\]ft·ı\u00a0"],
  [333, "()-`r„ˆ‹“”˜›¡¨²³´¸¹"],
  [334, "{}"],
  [350, "•"],
  [355, '"'],
  [365, "º"],
  [370, "ª"],
  [389, "*"],
  [400, "°"],
  [469, "^"],
  [500, "Jcksvxyz"],
  [537, "¶"],
  [552, "¯"],
  [556, "#$0123456789?L_abdeghnopqu€ƒ†‡–¢£¤¥§«»ð"],
  [576, "µ"],
  [584, "+<=>~¬×±÷"],
  [611, "FTZ¿ßø"],
  [667, "&ABEKPSVXYÞ"],
  [722, "CDHNRUwÐ"],
  [737, "©®"],
  [778, "GOQØ"],
  [833, "Mm"],
  [834, "¼½¾"],
  [889, "%æ"],
  [944, "Wœ"],
  [1000, "…‰Œ—™Æ"],
  [1015, "@"],
];
const STRONG: readonly (readonly [number, string])[] = [
  [238, "'"],
  [278, " ,./I\\ijl‚‘’·ı\u00a0"],
  [280, "|¦"],
  [333, "!()-:;[]`ftˆ‹˜›¡¨²³´¸¹"],
  [350, "•"],
  [365, "º"],
  [370, "ª"],
  [389, "*r{}"],
  [400, "°"],
  [474, '"'],
  [500, "z„“”"],
  [552, "¯"],
  [556, "#$0123456789J_aceksvxy€ƒ†‡–¢£¤¥§«¶»"],
  [576, "µ"],
  [584, "+<=>^~¬×±÷"],
  [611, "?FLTZbdghnopqu¿ßøð"],
  [667, "EPSVXYÞ"],
  [722, "&ABCDHKNRUÐ"],
  [737, "©®"],
  [778, "GOQwØ"],
  [833, "M"],
  [834, "¼½¾"],
  [889, "%mæ"],
  [944, "Wœ"],
  [975, "@"],
  [1000, "…‰Œ—™Æ"],
];

const byLetter = (rows: readonly (readonly [number, string])[]): ReadonlyMap<string, number> =>
  new Map(rows.flatMap(([width, letters]) => [...letters].map((letter) => [letter, width])));

const WIDTHS = {
  plain: byLetter([...PLAIN, [556, "þ"]]),
  strong: byLetter([...STRONG, [611, "þ"]]),
};

/** Accents that the 8-bit letters of a PDF have, on the letters that have them. */
const ACCENTED =
  /^(?:[AEIOUaeiou][\u0300\u0301\u0302\u0308]|[AONaon]\u0303|[Aa]\u030a|[Cc]\u0327|[Yy]\u0301|[Yy]\u0308|[SZsz]\u030c)$/u;

function widthOfLetter(letter: string, widths: ReadonlyMap<string, number>): number | undefined {
  const known = widths.get(letter);
  if (known !== undefined) return known;
  const parts = letter.normalize("NFD");
  if (!ACCENTED.test(parts)) return undefined;
  // An accent is wider than the stroke of an i, so its dotless form stands under it.
  const base = parts.charAt(0) === "i" ? "ı" : parts.charAt(0);
  return widths.get(base);
}

/** Signs that look the same as one of the letters a PDF has. */
const ALIKE: Readonly<Record<string, string>> = {
  "\u202f": "\u00a0",
  "\u2009": "\u00a0",
  "\u2011": "-",
  "\u2212": "–",
  "\u03bc": "µ",
};

/** A text as it is set: composed letters, single spaces, nothing that cannot be seen. */
export const setText = (text: string): string =>
  text
    .normalize("NFC")
    .replace(/[\u202f\u2009\u2011\u2212\u03bc]/gu, (sign) => ALIKE[sign] ?? sign)
    .replace(/[\p{Cc}\t\n ]+/gu, " ")
    .replace(/[\u00ad\u200b\u200e\u200f\u2060\ufeff]/gu, "")
    .trim();

/** Whether a text can be set in a PDF's own 8-bit letters; the dotless i only serves to measure. */
export const isPlainlySet = (text: string): boolean =>
  [...text].every((one) => one !== "ı" && widthOfLetter(one, WIDTHS.plain) !== undefined);

/** How wide a text is set, as a multiple of the type size. */
export type Measure = (text: string, strong: boolean) => number;

/**
 * The width of a text, as a multiple of the type size.
 *
 * @returns for letters outside the table one full size each, which is as wide as most scripts' are
 * @source the table above
 * @example
 * typeWidth("Use by", false) // => 3.112 ± 0.0001
 */
export const typeWidth: Measure = (text, strong) => {
  const widths = strong ? WIDTHS.strong : WIDTHS.plain;
  const sum = [...text].reduce((so, letter) => so + (widthOfLetter(letter, widths) ?? 1000), 0);
  return sum / 1000;
};
