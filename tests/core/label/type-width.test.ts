import fc from "fast-check";
import { expect, test } from "vitest";
import { isPlainlySet, setText, typeWidth } from "../../../core/label/type-width.ts";

/**
 * Every letter of the 8-bit set that a PDF's own fonts are asked in: ASCII, the upper half of
 * Latin-1 without the soft hyphen, and the 27 that stand between.
 *
 * @source the Unicode Consortium's mapping of code page 1252
 */
const BETWEEN = [
  0x20ac, 0x201a, 0x0192, 0x201e, 0x2026, 0x2020, 0x2021, 0x02c6, 0x2030, 0x0160, 0x2039, 0x0152,
  0x017d, 0x2018, 0x2019, 0x201c, 0x201d, 0x2022, 0x2013, 0x2014, 0x02dc, 0x2122, 0x0161, 0x203a,
  0x0153, 0x017e, 0x0178,
];
const WIN_ANSI = [
  ...Array.from({ length: 95 }, (_, at) => at + 0x20),
  ...BETWEEN,
  ...Array.from({ length: 96 }, (_, at) => at + 0xa0).filter((code) => code !== 0xad),
].map((code) => String.fromCodePoint(code));

// From an open font of the same widths (Liberation Sans 2, "metric-compatible"), measured in a
// browser at 1000 px: ± and ÷ are 549 there and 584 in the PDF fonts, where · is narrower too.
const MEASURED: readonly (readonly [string, plain: number, strong: number])[] = [
  ["Pear Beacon", 5.781, 6.058],
  ["i", 0.222, 0.278],
  ["ï", 0.278, 0.278],
  ["é", 0.556, 0.556],
  ["ñ", 0.556, 0.611],
  ["½", 0.834, 0.834],
  ["°", 0.4, 0.4],
  ["€", 0.556, 0.556],
  ["Œ", 1, 1],
  ["Š", 0.667, 0.667],
  ["ß", 0.611, 0.611],
  ["@", 1.015, 0.975],
];

test.each(MEASURED)("%s is %f wide, bold %f", (text, plain, strong) => {
  expect(typeWidth(text, false)).toBeCloseTo(plain, 9);
  expect(typeWidth(text, true)).toBeCloseTo(strong, 9);
});

test("every letter of the PDF's own set has a width, and is known to be of it", () => {
  expect(WIN_ANSI).toHaveLength(217);
  for (const letter of WIN_ANSI) {
    expect([letter, isPlainlySet(letter)]).toEqual([letter, true]);
    expect(typeWidth(letter, true)).toBeGreaterThan(0.18);
  }
});

test.each(["梨", "Ł", "ő", "ğ", "ı", "Ж", "א", "→", "🍐"])("%s is not of it", (letter) => {
  expect(isPlainlySet(letter)).toBe(false);
  expect(typeWidth(letter, false)).toBeGreaterThan(0);
});

test("no letter of another set is taken for one of it", () => {
  const known = new Set(WIN_ANSI);
  fc.assert(
    fc.property(fc.string({ unit: "binary", minLength: 1, maxLength: 1 }), (letter) => {
      const composed = letter.normalize("NFC");
      fc.pre([...composed].length === 1);
      expect(isPlainlySet(composed)).toBe(known.has(composed));
    }),
    { numRuns: 3000 },
  );
});

test("a text is set composed, with plain signs and nothing that cannot be seen", () => {
  expect(setText(" Pe\u0301re\n  &\tFils\u200b ")).toBe("P\u00e9re & Fils");
  expect(setText("22,5\u202f% \u2212 3 \u03bcm a\u00adb")).toBe("22,5\u00a0% – 3 µm ab");
});
