import fc from "fast-check";
import { expect, test } from "vitest";
import { apart, around, fromNothing, pathThrough, placed } from "../../../app/parts/chart-scale.ts";

test("a scale from nothing ends a little over the most; one around figures leaves air", () => {
  expect(fromNothing([2, 10])).toEqual({ from: 0, to: 10.8 });
  expect(fromNothing([])).toEqual({ from: 0, to: 1 });
  expect(around([0, 1])).toEqual({ from: -0.08, to: 1.08 });
  const { from, to } = around([0.9, 0.9]);
  expect((from + to) / 2).toBeCloseTo(0.9, 12);
  expect(to).toBeGreaterThan(0.9);
});

test("a figure is placed between the edges, also upside down", () => {
  expect(placed({ from: 0, to: 10 }, 50, 150)(5)).toBe(100);
  expect(placed({ from: 0, to: 10 }, 150, 50)(0)).toBe(150);
});

test("letters are moved apart in their order and stay on the paper", () => {
  expect(apart([100, 101], 17, { from: 0, to: 200 })).toEqual([100, 117]);
  expect(apart([199, 198, 10], 17, { from: 0, to: 200 })).toEqual([200, 183, 10]);
  const places = fc.array(fc.double({ min: 0, max: 200, noNaN: true }), { maxLength: 4 });
  fc.assert(
    fc.property(places, (some) => {
      const moved = apart(some, 17, { from: 0, to: 200 }).toSorted((a, b) => a - b);
      for (const [at, place] of moved.entries()) {
        expect(place).toBeGreaterThanOrEqual(0);
        expect(place).toBeLessThanOrEqual(200 + 1e-9);
        expect(place - (moved[at - 1] ?? -17)).toBeGreaterThanOrEqual(17 - 1e-9);
      }
    }),
  );
});

test("a line is drawn through its places, to a tenth", () => {
  expect(pathThrough([])).toBe("");
  expect(
    pathThrough([
      [1, 2],
      [3.14, 4.25],
    ]),
  ).toBe("M1.0 2.0L3.1 4.3");
});
