import { jStat } from "jstat";
import { expect, test } from "vitest";
import { beyondT } from "../../../../core/logbook/matters/student-t.ts";

// Printed tables of Student's t, two sides 5 % (from memory, in every textbook).
const FIVE_PERCENT = [
  [1, 12.706],
  [2, 4.303],
  [3, 3.182],
  [5, 2.571],
  [8, 2.306],
  [10, 2.228],
  [30, 2.042],
] as const;

for (const [freedom, t] of FIVE_PERCENT) {
  test(`t of ${t} with ${freedom} degrees of freedom: 5 %`, () => {
    expect(beyondT(t, freedom)).toBeCloseTo(0.05, 4);
  });
}

// jstat 1.9.6 goes by the incomplete beta function.
test("the same as the library for any t and freedom", () => {
  for (let freedom = 1; freedom <= 40; freedom += 1) {
    for (const t of [0, 0.1, 0.7, 1.5, 2.2, 4, 9]) {
      const library = 2 * (1 - jStat.studentt.cdf(t, freedom));
      expect(beyondT(t, freedom)).toBeCloseTo(library, 7);
      expect(beyondT(-t, freedom)).toBe(beyondT(t, freedom));
    }
  }
});

test("degrees of freedom that are none are refused", () => {
  expect(() => beyondT(1, 0)).toThrow(RangeError);
  expect(() => beyondT(1, 2.5)).toThrow(/whole/);
});
