import fc from "fast-check";
import { expect, test } from "vitest";
import { type Bell, spreadOfLogs } from "../../../../core/method/drip/bell-mixture.ts";
import { normalBelow } from "../../../../core/method/drip/normal-below.ts";

/** Of the logarithm itself. */
function spreadOf(bells: readonly Bell[]) {
  const { p10, p50, p90 } = spreadOfLogs(bells);
  return { p10: Math.log(p10), p50: Math.log(p50), p90: Math.log(p90) };
}

test("one bell, and two that lie far apart", () => {
  // 1.281552 standard deviations on either side hold 80 %.
  const one = spreadOf([{ mean: 10, sd: 2, weight: 3 }]);
  expect(one.p10).toBeCloseTo(10 - 2 * 1.281552, 4);
  expect(one.p50).toBeCloseTo(10, 4);
  expect(one.p90).toBeCloseTo(10 + 2 * 1.281552, 4);
  // A quarter lies at 100: the upper tenth is where six tenths of that quarter lie below.
  const two = spreadOf([
    { mean: 0, sd: 1, weight: 3 },
    { mean: 100, sd: 1, weight: 1 },
  ]);
  expect(two.p50).toBeCloseTo(0.430727, 4); // two thirds below, from memory
  expect(two.p90).toBeCloseTo(100.253347, 4); // six tenths below, from memory
});

const bells = fc.array(
  fc.record({
    mean: fc.double({ min: -50, max: 50, noNaN: true }),
    sd: fc.double({ min: 0.1, max: 10, noNaN: true }),
    weight: fc.double({ min: 1e-6, max: 10, noNaN: true }),
  }),
  { minLength: 1, maxLength: 8 },
);

test("in order, within reach, and moved as its bells are moved", () => {
  fc.assert(
    fc.property(bells, (some) => {
      const { p10, p50, p90 } = spreadOf(some);
      expect(p10).toBeLessThanOrEqual(p50);
      expect(p50).toBeLessThanOrEqual(p90);
      const total = some.reduce((sum, { weight }) => sum + weight, 0);
      const below = some.reduce(
        (sum, { mean, sd, weight }) => sum + weight * normalBelow((p50 - mean) / sd),
        0,
      );
      expect(Math.abs(below / total - 0.5)).toBeLessThan(0.01);
      const moved = spreadOf(some.map((bell) => ({ ...bell, mean: bell.mean + 7 })));
      expect(moved.p50).toBeCloseTo(p50 + 7, 3);
    }),
  );
});

test("of logarithms", () => {
  const { p10, p50, p90 } = spreadOfLogs([{ mean: Math.log(100), sd: 0.1, weight: 1 }]);
  expect(p50).toBeCloseTo(100, 3);
  expect(p10).toBeCloseTo(100 * Math.exp(-0.1281552), 3);
  expect(p90).toBeCloseTo(100 * Math.exp(0.1281552), 3);
});

test("as many bells as a drip has are weighed as few, and the whole keeps its shape", () => {
  // Means in two heaps, widths of 0.02 to 0.15: as cases of a drip lie.
  const many: readonly Bell[] = Array.from({ length: 1500 }, (_, at) => ({
    mean: 16.4 + 0.35 * Math.sin(at * 0.7) + (at % 3 === 0 ? 0.5 : 0),
    sd: 0.024 + 0.012 * ((at * 7) % 11),
    weight: 1 + ((at * 13) % 17),
  }));
  const total = many.reduce((sum, { weight }) => sum + weight, 0);
  const below = (x: number): number =>
    many.reduce((sum, { mean, sd, weight }) => sum + weight * normalBelow((x - mean) / sd), 0) /
    total;
  const { p10, p50, p90 } = spreadOf(many);
  // 0.05 % of the time.
  for (const [share, x] of [
    [0.1, p10],
    [0.5, p50],
    [0.9, p90],
  ] as const) {
    expect(below(x - 0.0005)).toBeLessThan(share);
    expect(below(x + 0.0005)).toBeGreaterThan(share);
  }
});

test("refuses no bell at all", () => {
  expect(() => spreadOfLogs([])).toThrow("at least one part, got none");
});
