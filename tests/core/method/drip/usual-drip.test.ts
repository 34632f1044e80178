import { expect, test } from "vitest";
import { usualDrip } from "../../../../core/method/drip/usual-drip.ts";

const HOUR = 3_600_000;

test("one litre through one paper takes about an hour (a public answer page, low authority)", () => {
  expect(usualDrip(1000, 1)).toBe(HOUR);
});

test("five litres on two filters take four to twelve hours (common practice, no source)", () => {
  expect(usualDrip(5000, 2)).toBeGreaterThan(4 * HOUR);
  expect(usualDrip(5000, 2)).toBeLessThan(12 * HOUR);
});

test("twice the filters, a quarter of the time", () => {
  expect(usualDrip(4000, 2)).toBe(usualDrip(4000, 1) / 4);
  expect(usualDrip(0, 3)).toBe(0);
});

test.each([
  [-1, 1],
  [1000, 0],
  [Number.NaN, 1],
])("refuses %f ml on %f filters", (ml, filters) => {
  expect(() => usualDrip(ml, filters)).toThrow(RangeError);
});
