import fc from "fast-check";
import { expect, test } from "vitest";
import { MASS_STEPS, roundToStep, VOLUME_STEPS } from "../../../core/quantity/rounding.ts";

// Worked by hand: the nearest multiple, halves up.
test.each([
  [61.2, 2.5, 60],
  [61.25, 2.5, 62.5],
  [61.3, 2.5, 62.5],
  [62.4, 5, 60],
  [62.5, 5, 65],
  [14.49, 1, 14],
  [0.34, 0.1, 0.3],
  [0.35, 0.1, 0.4],
  [1234.56, 0.1, 1234.6],
  [2.4, 5, 5],
  [0.02, 0.1, 0.1],
  [0, 5, 0],
])("%d in steps of %d is %d", (amount, step, rounded) => {
  expect(roundToStep(amount, step)).toBe(rounded);
});

const amounts = fc.double({ min: 0, max: 1e6, noNaN: true });
const steps = fc.constantFrom(...VOLUME_STEPS, ...MASS_STEPS);

test("the nearest step: off by half a step at most, or lifted to one step", () => {
  fc.assert(
    fc.property(amounts, steps, (amount, step) => {
      const rounded = roundToStep(amount, step);
      const count = rounded / step;
      expect(Math.abs(count - Math.round(count))).toBeLessThan(1e-6);
      if (amount >= step / 2) {
        expect(Math.abs(rounded - amount)).toBeLessThanOrEqual(step / 2 + 1e-6 * step);
      } else {
        expect(rounded).toBe(amount === 0 ? 0 : step);
      }
    }),
  );
});

test("what is rounded stays as it is, and more never rounds to less", () => {
  fc.assert(
    fc.property(amounts, amounts, steps, (a, b, step) => {
      const [less, more] = [Math.min(a, b), Math.max(a, b)];
      expect(roundToStep(less, step)).toBeLessThanOrEqual(roundToStep(more, step));
      expect(roundToStep(roundToStep(a, step), step)).toBe(roundToStep(a, step));
    }),
  );
});

test.each([
  [-1, 5],
  [Number.NaN, 5],
  [Number.POSITIVE_INFINITY, 5],
])("an amount of %d is refused", (amount, step) => {
  expect(() => roundToStep(amount, step)).toThrow(/amount to round must be 0 or more/);
});

test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])("a step of %d is refused", (step) => {
  expect(() => roundToStep(10, step)).toThrow(/step must be above 0/);
});
