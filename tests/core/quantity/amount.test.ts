import fc from "fast-check";
import { expect, test } from "vitest";
import { isMassUnit, measured, parseAmount } from "../../../core/quantity/amount.ts";
import { MASS_MEASURES } from "../../../core/quantity/measures-table.ts";
import { UNIT_WORDS } from "../../../core/quantity/unit-words-table.ts";
import published from "../../published/measures.json";

function exactly(typed: string) {
  const read = parseAmount(typed);
  if (!read.ok) throw new Error(`${typed} was refused: ${read.refusal}`);
  return measured(read.value, "exact");
}

test.each(published.us.rows)("$typed is $ml ml, to the last digit (NIST)", ({ typed, ml }) => {
  expect(exactly(typed)).toEqual({ kind: "volume", ml });
});

test.each(published.gallon.shares)("$typed: 1/$perGallon of 231 cubic inches", (row) => {
  const { cubicInches, inchInMm } = published.gallon;
  const gallon = (cubicInches * inchInMm ** 3) / 1000;
  const got = exactly(row.typed);
  expect(got.kind === "volume" && got.ml).toBeCloseTo(gallon / row.perGallon, 9);
});

test.each(published.mass.rows)("$typed is $g g (NIST)", ({ typed, g }) => {
  expect(exactly(typed)).toEqual({ kind: "mass", g });
});

test.each(published.bar.rows)("$typed lies between $low and $high ml (practice)", (row) => {
  const got = exactly(row.typed);
  expect(got.kind === "volume" && got.ml >= row.low && got.ml <= row.high).toBe(true);
});

// Common practice, no source: a change of these changes specs that are written already.
test("a dash is 0.8 ml, a barspoon 5 ml, twenty drops a millilitre", () => {
  expect(["1 dash", "1 barspoon", "20 drops"].map(exactly)).toEqual(
    [0.8, 5, 1].map((ml) => ({ kind: "volume", ml })),
  );
});

test("the house's ounce is 30 ml unless it pours the exact one", () => {
  const read = parseAmount("2 oz");
  expect(read.ok && measured(read.value, "bar")).toEqual({ kind: "volume", ml: 60 });
});

// How people write amounts: typography and units by SI and US custom, the rest common practice.
const WRITTEN: readonly [string, number, string, string?][] = [
  ["1 1/2 oz", 1.5, "oz"],
  ["1-1/2 oz", 1.5, "oz"],
  ["1 - 1/2 oz", 1.5, "oz"],
  ["¾ oz", 0.75, "oz"],
  ["1½oz", 1.5, "oz"],
  ["1 ½ oz", 1.5, "oz"],
  ["⅖ oz", 0.4, "oz"],
  ["⅐ l", 1 / 7, "l"],
  ["1⁄2 oz", 0.5, "oz"],
  ["3/4oz", 0.75, "oz"],
  ["1 / 2 oz", 0.5, "oz"],
  ["22,5 ml", 22.5, "ml"],
  ["22.5 ml", 22.5, "ml"],
  [".5 oz", 0.5, "oz"],
  [",5 oz", 0.5, "oz"],
  ["45ml", 45, "ml"],
  ["45 mL", 45, "ml"],
  ["45 ML.", 45, "ml"],
  ["  45   ml  ", 45, "ml"],
  ["2 dashes", 2, "dash"],
  ["1 dash", 1, "dash"],
  ["3 drops saline", 3, "drop", "saline"],
  ["120 g", 120, "g"],
  ["0,3 g", 0.3, "g"],
  ["0,125 l", 0.125, "l"],
  ["1,000 ml", 1000, "ml"],
  ["1,000,000 mg", 1_000_000, "mg"],
  ["12,345.5 ml", 12_345.5, "ml"],
  ["1\u202f000 ml", 1000, "ml"],
  ["10,00 ml", 10, "ml"],
  ["1000 ml", 1000, "ml"],
  ["1 fl oz", 1, "oz"],
  ["1 fl. oz. gin", 1, "oz", "gin"],
  ["1floz", 1, "oz"],
  ["2 fluid ounces gin", 2, "oz", "gin"],
  ["1 bar spoon syrup", 1, "barspoon", "syrup"],
  ["2 bsp", 2, "barspoon"],
  ["2 oz. rye", 2, "oz", "rye"],
  ["1.5L", 1.5, "l"],
  ["4cl lemon", 4, "cl", "lemon"],
  ["45 ml lemon juice", 45, "ml", "lemon juice"],
  ["1 kg", 1, "kg"],
  ["2 lbs", 2, "lb"],
];

test.each(WRITTEN)("%s reads as %s %s", (typed, value, unit, rest = "") => {
  const read = parseAmount(typed);
  expect(read).toEqual({ ok: true, value: { value: expect.closeTo(value, 12), unit, rest } });
});

const REFUSED: readonly [string, string][] = [
  ["", "amount-empty"],
  [" \t\n", "amount-empty"],
  ["gin", "amount-without-number"],
  ["a dash", "amount-without-number"],
  ["½½", "amount-without-unit"],
  ["1/0 oz", "amount-without-number"],
  ["0/0 oz", "amount-without-number"],
  ["45", "amount-without-unit"],
  ["1-2 dashes", "amount-without-unit"],
  ["1 000 ml", "amount-without-unit"],
  ["1.000,5 ml", "amount-without-unit"],
  ["1,000,5 ml", "amount-without-unit"],
  ["1\u00a0250,5 ml", "amount-without-unit"],
  ["3 limes", "amount-unknown-unit"],
  ["1e5 ml", "amount-unknown-unit"],
  ["45 constructor", "amount-unknown-unit"],
  ["45 __proto__", "amount-without-unit"],
  ["45 mll", "amount-unknown-unit"],
  ["0 ml", "amount-not-positive"],
  ["0/4 oz", "amount-not-positive"],
  ["-5 ml", "amount-not-positive"],
  ["−,5 ml", "amount-not-positive"],
  ["1000001 ml", "amount-too-large"],
  ["1001 l", "amount-too-large"],
  ["1000001 drops", "amount-too-large"],
  [`${"9".repeat(400)} ml`, "amount-too-large"],
];

test.each(REFUSED)("%j is refused: %s", (typed, refusal) => {
  expect(parseAmount(typed)).toMatchObject({ ok: false, refusal });
});

test("a refusal says what came", () => {
  expect(parseAmount(" 45 ")).toMatchObject({ about: { typed: "45" } });
  expect(parseAmount("3 Limes")).toMatchObject({ about: { unit: "Limes" } });
});

// Spanish: a point parts thousands, a comma tenths (CLDR es). French: thin spaces, a comma (CLDR fr).
// What the other mark can mean besides is our judgement.
test.each([
  ["1,250 ml", "1.000,5", 1.25],
  ["1.250 ml", "1.000,5", 1250],
  ["1.250,5 ml", "1.000,5", 1250.5],
  ["345.678,5 mg", "1.000,5", 345_678.5],
  ["22.5 ml", "1.000,5", 22.5],
  ["0.125 l", "1.000,5", 0.125],
  ["1\u202f250,5 ml", "1.000,5", 1250.5],
  ["1,250 ml", "1 000,5", 1.25],
  ["1.250 ml", "1 000,5", 1.25],
  ["1\u202f250,5 ml", "1 000,5", 1250.5],
  ["1\u00a0250.5 ml", "1 000,5", 1250.5],
  ["1 1/2 oz", "1 000,5", 1.5],
] as const)("%j, where a thousand and a half is %s, is %d", (typed, style, value) => {
  expect(parseAmount(typed, style)).toMatchObject({ ok: true, value: { value, rest: "" } });
});

test.each([
  ["2 golpes de amargo", 2, "dash", "de amargo"],
  ["1 cucharada", 1, "tbsp", ""],
  ["1 galón", 1, "gallon", ""],
  ["2 cuillères de sirop", 2, "barspoon", "de sirop"],
  ["3 gouttes", 3, "drop", ""],
  ["1 càc", 1, "tsp", ""],
] as const)("%j has a Spanish or French unit", (typed, value, unit, rest) => {
  expect(parseAmount(typed, "1 000,5")).toEqual({ ok: true, value: { value, unit, rest } });
});

const anyText = fc.oneof(
  fc.string({ unit: "binary", maxLength: 40 }),
  fc.string({ unit: fc.constantFrom(..."0123456789/.,-½⅞⁄ \u202f\u00a0mloz"), maxLength: 20 }),
);

test("never throws, and what it accepts is an amount", () => {
  fc.assert(
    fc.property(anyText, (text) => {
      const read = parseAmount(text);
      if (!read.ok) {
        expect(read.refusal).toMatch(/^amount-/);
        return;
      }
      expect(read.value.value).toBeGreaterThan(0);
      expect(read.value.value).toBeLessThanOrEqual(1_000_000);
      expect(Object.values(UNIT_WORDS)).toContain(read.value.unit);
    }),
    { numRuns: 2000 },
  );
});

const words = Object.keys(UNIT_WORDS).filter((word) => !/^fl|^fluid/u.test(word));

test("every number of ours reads back with every unit, point or comma, tight or spaced", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 26_000 }),
      fc.constantFrom(...words),
      fc.constantFrom(".", ","),
      fc.constantFrom("", " "),
      (hundredths, word, mark, gap) => {
        const text = `${(hundredths / 100).toFixed(2).replace(".", mark)}${gap}${word}`;
        const read = parseAmount(text);
        expect(read).toMatchObject({ ok: true });
        if (read.ok) expect(read.value.value).toBeCloseTo(hundredths / 100, 10);
      },
    ),
  );
});

test("weights and measures are told apart", () => {
  const units = [...new Set(Object.values(UNIT_WORDS))];
  expect(units.filter(isMassUnit)).toEqual(expect.arrayContaining(Object.keys(MASS_MEASURES)));
  expect(isMassUnit("oz")).toBe(false);
});
