import fc from "fast-check";
import { expect, test } from "vitest";
import { labelStrength } from "../../../core/label/label-strength.ts";

test.each([
  [0, 0],
  [0.0024, 0],
  [0.0025, 0.005],
  [0.1949, 0.195],
  [0.2, 0.2],
  [0.2224, 0.22],
  [0.2226, 0.225],
  [1, 1],
])("%d reads %d on the label", (strength, shown) => {
  expect(labelStrength(strength)).toBe(shown);
});

// 27 CFR 19.356 and directive 87/250/EEC: a label may be 0.3 % vol from the truth for spirits.
test("rounding alone stays inside the narrowest tolerance", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (strength) => {
      expect(Math.abs(labelStrength(strength) - strength)).toBeLessThan(0.003);
      expect(Number.isInteger(Math.round(labelStrength(strength) * 1e9) / 5e6)).toBe(true);
    }),
  );
});
