import fc from "fast-check";
import { expect, test } from "vitest";
import { leadingNumber, type NumberStyle } from "../../../core/quantity/leading-number.ts";

test.each([
  ["1 1/2 oz", 1.5, "oz"],
  ["1-1/2oz", 1.5, "oz"],
  ["¾", 0.75, ""],
  ["2⅞ cups", 2.875, "cups"],
  ["22,5ml", 22.5, "ml"],
  [".5 l", 0.5, "l"],
  ["1,000 ml", 1000, "ml"],
  ["0,125 l", 0.125, "l"],
  ["12 of them", 12, "of them"],
])("%j is led by %d", (text, value, rest) => {
  expect(leadingNumber(text)).toEqual({ value, rest });
});

test.each(["", "gin", "-5 ml", "1/0 oz", "oz 2"])("no number leads %j", (text) => {
  expect(leadingNumber(text)).toBeUndefined();
});

// How Intl writes a figure in a language that has this style, thousands and tenths together.
test.each([
  ["en", "1,000.5"],
  ["es", "1.000,5"],
  ["fr", "1 000,5"],
] as const)("what %s writes is read back", (language, style: NumberStyle) => {
  const written = new Intl.NumberFormat(language, { useGrouping: "always" });
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 99_999_999 }), (hundredths) => {
      const value = hundredths / 100;
      expect(leadingNumber(`${written.format(value)} ml`, style)).toEqual({ value, rest: "ml" });
    }),
  );
});

const anyText = fc.oneof(
  fc.string({ unit: "binary", maxLength: 40 }),
  fc.string({ unit: fc.constantFrom(..."0123456789/.,-½⅞⁄ \u202f\u00a0mloz"), maxLength: 20 }),
);

test("never throws, and what it reads is no less than nothing", () => {
  fc.assert(
    fc.property(anyText, (text) => {
      const lead = leadingNumber(text);
      if (lead !== undefined) expect(lead.value).toBeGreaterThanOrEqual(0);
    }),
    { numRuns: 2000 },
  );
});
