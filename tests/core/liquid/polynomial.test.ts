import fc from "fast-check";
import { expect, test } from "vitest";
import { polynomial } from "../../../core/liquid/polynomial.ts";

test.each([
  [[], 3, 0],
  [[7], 3, 7],
  [[1, -2, 3], 2, 9],
  [[0, 0, 0, 1], -2, -8],
])("%j at %d is %d", (coefficients, x, value) => {
  expect(polynomial(coefficients, x)).toBe(value);
});

test("agrees with the sum of powers", () => {
  const coefficient = fc.double({ min: -10, max: 10, noNaN: true });
  fc.assert(
    fc.property(fc.array(coefficient, { maxLength: 8 }), coefficient, (coefficients, x) => {
      const sum = coefficients.reduce((total, c, power) => total + c * x ** power, 0);
      expect(polynomial(coefficients, x)).toBeCloseTo(sum, -Math.log10(1e-9 * 10 ** 8));
    }),
  );
});
