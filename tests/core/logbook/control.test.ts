import fc from "fast-check";
import { expect, test } from "vitest";
import { controlOf, FEWEST_IN_CONTROL } from "../../../core/logbook/control.ts";

// NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2: ten flow rates (from memory, and worked
// through by hand: mean range 16.9 / 9). It prints 45.8159, 50.81 and 55.8041, with 3 / 1.128.
const FLOW = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];

test("the handbook's ten flow rates", () => {
  const control = controlOf(FLOW);
  expect(control?.mean).toBeCloseTo(50.81, 9);
  expect(control?.movingRange).toBeCloseTo(1.8778, 4);
  expect(control?.high).toBeCloseTo(55.8041, 2);
  expect(control?.low).toBeCloseTo(45.8159, 2);
  expect(control?.outside).toEqual([]);
  expect(control?.widened).toBe(false);
});

test("below eight figures there are no limits", () => {
  expect(controlOf(FLOW.slice(0, FEWEST_IN_CONTROL - 1))).toBeUndefined();
  expect(controlOf(FLOW.slice(0, FEWEST_IN_CONTROL))).toBeDefined();
});

test("one odd figure lies outside, widens the plain limits and leaves the robust ones", () => {
  const even = [...FLOW, 50, 51.5, 49.5, 50.6, 51, 52.2];
  const odd = [...even.slice(0, 7), 20, ...even.slice(8)];
  const control = controlOf(odd);
  expect(control?.outside).toEqual([7]);
  expect(control?.widened).toBe(true);
  const moved = Math.abs((control?.robust.low ?? 0) - (controlOf(even)?.robust.low ?? 0));
  const plain = Math.abs((control?.low ?? 0) - (controlOf(even)?.low ?? 0));
  expect(moved).toBeLessThan(2);
  expect(plain).toBeGreaterThan(5 * moved);
});

// The mean and the median of the difference of two normals are 2 / √π and √2 × 0.6745 standard
// deviations (any textbook): three of these stand in both forms.
test("both forms reach three standard deviations of a normal", () => {
  const control = controlOf(FLOW);
  const ranges = FLOW.slice(1).map((one, at) => Math.abs(one - (FLOW[at] ?? 0)));
  const median = ranges.toSorted((a, b) => a - b)[4] ?? 0;
  const plain = ((control?.high ?? 0) - (control?.mean ?? 0)) / (control?.movingRange ?? 1);
  const robust = ((control?.robust.high ?? 0) - (control?.robust.middle ?? 0)) / median;
  expect(plain).toBeCloseTo(3 / (2 / Math.sqrt(Math.PI)), 2);
  expect(robust).toBeCloseTo(3 / (Math.SQRT2 * 0.67449), 2);
});

test("limits move and stretch with the figures", () => {
  const figures = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), {
    minLength: 8,
    maxLength: 40,
  });
  fc.assert(
    fc.property(figures, fc.double({ min: 0.5, max: 9, noNaN: true }), (some, by) => {
      const plain = controlOf(some);
      const moved = controlOf(some.map((one) => by * one + 3));
      expect(moved?.high).toBeCloseTo(by * (plain?.high ?? 0) + 3, 6);
      expect(moved?.robust.low).toBeCloseTo(by * (plain?.robust.low ?? 0) + 3, 6);
    }),
  );
});
