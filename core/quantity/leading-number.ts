const VULGAR = /[¼-¾⅐-⅞]/gu;
/** A whole number and a fraction ("1 1/2", "1-1/2"), or the fraction alone. */
const FRACTION = /^(?:(\d+)(?:\s+|\s*-\s*))?(\d+)\s*\/\s*(\d+)/u;
/** How a language writes a thousand and a half: it settles what "1,250" means. */
export type NumberStyle = "1,000.5" | "1.000,5" | "1 000,5";

/** Thousands parted by the language's mark or by thin spaces, never by an ordinary space. */
const THOUSANDS: Readonly<Record<NumberStyle, RegExp>> = {
  "1,000.5": /^[1-9]\d{0,2}(?:(?:,\d{3})+|(?:[\u00a0\u2009\u202f]\d{3})+)(?![\d,])(?:\.\d+)?/u,
  "1.000,5": /^[1-9]\d{0,2}(?:(?:\.\d{3})+|(?:[\u00a0\u2009\u202f]\d{3})+)(?![\d.])(?:,\d+)?/u,
  "1 000,5": /^[1-9]\d{0,2}(?:[\u00a0\u2009\u202f]\d{3})+(?!\d)(?:[.,]\d+)?/u,
};
/** Either mark parts the tenths wherever the thousands do not need it. */
const DECIMAL = /^(?:\d+(?:[.,]\d+)?|[.,]\d+)/u;

/** Vulgar fractions become "1/2", with a space when a whole number stands before them. */
const spelledOut = (text: string): string =>
  text
    .trim()
    .replace(VULGAR, (sign) => ` ${sign.normalize("NFKC")}`)
    .replaceAll("⁄", "/")
    .trim();

/** A number at the head of a text, and what follows it. */
export interface LeadingNumber {
  readonly value: number;
  readonly rest: string;
}

function plainAtHead(text: string, style: NumberStyle): LeadingNumber | undefined {
  const grouped = THOUSANDS[style].exec(text)?.[0];
  const all = grouped ?? DECIMAL.exec(text)?.[0];
  if (all === undefined) return undefined;
  const loose = grouped === undefined ? all : all.replace(/[\u00a0\u2009\u202f]/gu, "");
  const bare = style === "1 000,5" || grouped === undefined;
  const digits = bare ? loose : loose.replaceAll(style === "1,000.5" ? "," : ".", "");
  return { value: Number(digits.replace(",", ".")), rest: text.slice(all.length).trim() };
}

/**
 * Reads the number at the head of a line: "1 1/2 oz", "¾", "22,5ml", "1,000 ml", ".5". Exactly three
 * digits after the mark that parts thousands are thousands, but not after a leading 0; any other
 * comma or point parts the tenths.
 *
 * @param text - as typed
 * @param style - of the language it is typed in; English unless told
 * @returns the number and what follows it, or nothing where no number leads
 * @example
 * leadingNumber("1 1/2 oz").value // => 1.5
 */
export function leadingNumber(
  text: string,
  style: NumberStyle = "1,000.5",
): LeadingNumber | undefined {
  const clean = spelledOut(text);
  const [all, whole, top, bottom] = FRACTION.exec(clean) ?? [];
  if (all === undefined) return plainAtHead(clean, style);
  if (Number(bottom) === 0) return undefined;
  const value = Number(whole ?? 0) + Number(top) / Number(bottom);
  return { value, rest: clean.slice(all.length).trim() };
}
