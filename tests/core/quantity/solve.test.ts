import fc from "fast-check";
import { expect, test } from "vitest";
import { rootBetween } from "../../../core/quantity/solve.ts";

// Roots known without a computer: definitions and school identities.
test.each<[string, (x: number) => number, number, number, number]>([
  ["the square root of 2", (x) => x * x - 2, 0, 2, Math.SQRT2],
  ["pi, where the sine turns", (x) => Math.sin(x), 2, 4, Math.PI],
  ["e, where the logarithm is 1", (x) => Math.log(x) - 1, 1, 5, Math.E],
  ["a falling line", (x) => 3 - x, -10, 10, 3],
  ["a kink", (x) => (x < 1 ? 100 * (x - 1) : x - 1), 0, 50, 1],
  ["a steep wall", (x) => Math.atan(1e6 * (x - 0.3)), -5, 7, 0.3],
])("%s", (_, f, low, high, root) => {
  expect(Math.abs(rootBetween(f, low, high, 1e-11) - root)).toBeLessThan(1e-10);
});

test("a flat end does not stall it", () => {
  let calls = 0;
  const flat = (x: number): number => {
    calls += 1;
    return (x - 0.9) ** 9;
  };
  expect(rootBetween(flat, -1, 1, 1e-4)).toBeCloseTo(0.9, 3);
  expect(calls).toBeLessThan(60);
});

test("the Illinois step keeps a bent function quick: 12 calls, 21 without it", () => {
  let calls = 0;
  const bent = (x: number): number => {
    calls += 1;
    return Math.log(x) - 1;
  };
  rootBetween(bent, 1, 5, 1e-10);
  expect(calls).toBeLessThan(16);
});

test("a root on either end is found at once", () => {
  expect(rootBetween((x) => x, 0, 5, 1e-9)).toBe(0);
  expect(rootBetween((x) => x - 5, 0, 5, 1e-9)).toBe(5);
});

test("the answer lies in the bracket and near the root, either way round", () => {
  const root = fc.integer({ min: -100_000, max: 100_000 }).map((thousandths) => thousandths / 1000);
  const width = fc.double({ min: 0.001, max: 1000, noNaN: true });
  fc.assert(
    fc.property(root, width, width, fc.constantFrom(1, 3, 5), (at, left, right, power) => {
      const f = (x: number): number => Math.sign(x - at) * Math.abs(x - at) ** power;
      for (const sign of [1, -1]) {
        const got = rootBetween((x) => sign * f(x), at - left, at + right, 1e-6);
        expect(Math.abs(got - at)).toBeLessThan(2e-6);
        const turned = rootBetween((x) => sign * f(x), at + right, at - left, 1e-6);
        expect(Math.abs(turned - at)).toBeLessThan(2e-6);
      }
    }),
  );
});

test("refuses a bracket without a change of sign, or no number at all", () => {
  expect(() => rootBetween((x) => x * x + 1, -1, 1, 1e-9)).toThrow(
    "must change sign between -1 and 1, got 2 and 2",
  );
  expect(() => rootBetween(() => Number.NaN, 0, 1, 1e-9)).toThrow(RangeError);
});
