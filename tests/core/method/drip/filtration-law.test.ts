import fc from "fast-check";
import { expect, test } from "vitest";
import {
  filtrationLaw,
  shareThrough,
  unitTimes,
} from "../../../../core/method/drip/filtration-law.ts";

const left = (f: number) => Math.sqrt(1 - f);
/** Integrals done by hand: of (1 - f)^-n and of f^s (1 - f)^-n. */
const CLOSED = [
  { head: 0, packing: 1, medium: (f: number) => f, cake: (f: number) => f ** 2 / 2 },
  {
    head: 1,
    packing: 1,
    medium: (f: number) => -Math.log(1 - f),
    cake: (f: number) => -Math.log(1 - f) - f,
  },
  {
    head: 0.5,
    packing: 1,
    medium: (f: number) => 2 * (1 - left(f)),
    cake: (f: number) => 2 * (1 - left(f)) - (2 / 3) * (1 - left(f) ** 3),
  },
  { head: 0, packing: 1.6, medium: (f: number) => f, cake: (f: number) => f ** 2.6 / 2.6 },
];
const SHARES = [0.01, 0.05, 0.2, 0.5, 0.8, 0.9, 0.95, 0.99];

test.each(CLOSED)("the integral done by hand: head $head, packing $packing", (row) => {
  const law = filtrationLaw(row.head, row.packing);
  for (const f of SHARES) {
    const times = unitTimes(law, f);
    // Straight between steps of the tables: 0.05 %.
    expect(times.medium / row.medium(f)).toBeCloseTo(1, 3);
    expect(Math.abs(times.cake / row.cake(f) - 1)).toBeLessThan(5e-4);
    expect(times.mediumRise).toBeCloseTo(f / (1 - f) ** row.head, 9);
    expect(times.cakeRise).toBeCloseTo(f ** (1 + row.packing) / (1 - f) ** row.head, 9);
  }
});

test("a clogging filter: nothing before it starts, then as the integral of an exponential", () => {
  const law = filtrationLaw(0, 1, { from: 0.3, growth: 9 });
  expect(unitTimes(law, 0.25).medium).toBeCloseTo(0.25, 6);
  const expected = 0.3 + Math.expm1(9 * 0.5) / 9;
  // Straight between steps where it grows e-fold in a few of them: 2 %.
  expect(Math.abs(unitTimes(law, 0.8).medium / expected - 1)).toBeLessThan(0.02);
  expect(unitTimes(law, 0.8).mediumRise).toBeCloseTo(0.8 * Math.exp(4.5), 6);
});

const laws = fc
  .tuple(
    fc.double({ min: 0, max: 1, noNaN: true }),
    fc.double({ min: 1, max: 2, noNaN: true }),
    fc.constantFrom(undefined, { from: 0.2, growth: 12 }),
  )
  .map((choice) => filtrationLaw(...choice));
const shares = fc.double({ min: 0.02, max: 0.99, noNaN: true });
const parts = fc.record({
  medium: fc.double({ min: 0.01, max: 5, noNaN: true }),
  cake: fc.double({ min: 0, max: 5, noNaN: true }),
});

test("more takes longer, and the rise says how much longer", () => {
  fc.assert(
    fc.property(laws, shares, (law, f) => {
      const step = 1.001;
      const [before, at, after] = [f / step, f, f * step].map((share) => unitTimes(law, share));
      if (!before || !at || !after) throw new RangeError("three shares must give three times");
      expect(after.medium).toBeGreaterThan(at.medium);
      expect(after.cake).toBeGreaterThan(at.cake);
      const slope = (after.cake - before.cake) / (2 * Math.log(step));
      // A slope across straight pieces: rough where it clogs fast.
      expect(Math.abs(slope / at.cakeRise - 1)).toBeLessThan(0.4);
    }),
  );
});

test("the share at a time and the time at a share undo each other", () => {
  fc.assert(
    fc.property(laws, parts, shares, (law, resistance, f) => {
      const times = unitTimes(law, f);
      const time = resistance.medium * times.medium + resistance.cake * times.cake;
      expect(Math.abs(shareThrough(law, resistance, time) - f)).toBeLessThan(0.0125);
    }),
  );
});

test("the ends: nothing at once, all after any time, and never more than all", () => {
  const law = filtrationLaw(1, 1);
  expect(shareThrough(law, { medium: 1, cake: 1 }, 0)).toBe(0);
  expect(shareThrough(law, { medium: 1, cake: 1 }, 1e9)).toBeCloseTo(0.9975, 4);
  expect(unitTimes(law, 2)).toEqual(unitTimes(law, 0.99999));
});

test("a law is made once", () => {
  expect(filtrationLaw(0.25, 1.5)).toBe(filtrationLaw(0.25, 1.5));
  expect(filtrationLaw(0.25, 1.5)).not.toBe(filtrationLaw(0.25, 1.5, { from: 0.5, growth: 1 }));
});
