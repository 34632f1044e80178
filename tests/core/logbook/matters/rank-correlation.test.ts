import fc from "fast-check";
import { jStat } from "jstat";
import { expect, test } from "vitest";
import {
  holm,
  rankCorrelation,
  ranksOf,
} from "../../../../core/logbook/matters/rank-correlation.ts";

const pairsOf = (x: readonly number[], y: readonly number[]) =>
  x.map((one, at) => ({ x: one, y: y[at] ?? 0 }));

// The worked example of Wikipedia, "Spearman's rank correlation coefficient" (from memory): ten
// people's IQ and hours of television, −29/165, p 0.627 by Student's t.
test("the textbook's ten people", () => {
  const iq = [106, 100, 86, 101, 99, 103, 97, 113, 112, 110];
  const hours = [7, 27, 2, 50, 28, 29, 20, 12, 6, 17];
  const found = rankCorrelation(pairsOf(iq, hours));
  expect(found?.rho).toBeCloseTo(-29 / 165, 12);
  expect(found?.p).toBeCloseTo(0.627, 3);
  expect(found?.n).toBe(10);
});

const coarse = fc.array(fc.integer({ min: 0, max: 6 }), { minLength: 3, maxLength: 30 });
const varies = (some: readonly number[]) => new Set(some).size > 1;

// jstat 1.9.6, which shares ranks among equal figures as well.
test("with ties, the same as the library", () => {
  fc.assert(
    fc.property(coarse, fc.infiniteStream(fc.integer({ min: 0, max: 4 })), (x, stream) => {
      const y = x.map(() => stream.next().value);
      fc.pre(varies(x) && varies(y));
      expect(ranksOf(x)).toEqual(jStat.rank(x));
      expect(rankCorrelation(pairsOf(x, y))?.rho).toBeCloseTo(jStat.spearmancoeff(x, y), 9);
    }),
  );
});

test("a figure that never changes, or fewer than three pairs, say nothing", () => {
  expect(rankCorrelation(pairsOf([1, 1, 1, 1], [1, 2, 3, 4]))).toBeUndefined();
  expect(rankCorrelation(pairsOf([1, 2], [1, 2]))).toBeUndefined();
});

test("in step it is 1, against each other −1; only the order counts", () => {
  const x = [1, 5, 2, 8, 3, 9, 4, 7];
  const up = rankCorrelation(
    pairsOf(
      x,
      x.map((one) => one ** 3),
    ),
  );
  expect(up?.rho).toBe(1);
  expect(up?.p).toBeLessThan(1e-6);
  expect(
    rankCorrelation(
      pairsOf(
        x,
        x.map((one) => -one),
      ),
    )?.rho,
  ).toBe(-1);
});

// Every order of seven places counted: the share of orders at least as far out as ρ = 0.786 is
// 0.048 (printed tables of Spearman's coefficient for n = 7, two sides 5 %: 0.786, from memory).
test("the approximate p is near the one counted over every order", () => {
  const x = [1, 2, 3, 4, 5, 6, 7];
  const found = rankCorrelation(pairsOf(x, [2, 1, 3, 5, 4, 7, 6]));
  expect(found?.rho).toBeCloseTo(0.893, 3);
  let [far, all] = [0, 0];
  const walk = (left: readonly number[], order: readonly number[]): void => {
    if (left.length === 0) {
      all += 1;
      const d = order.reduce((sum, one, at) => sum + (one - (at + 1)) ** 2, 0);
      if (Math.abs(1 - (6 * d) / (7 * 48)) >= (found?.rho ?? 1) - 1e-9) far += 1;
    }
    for (const one of left)
      walk(
        left.filter((other) => other !== one),
        [...order, one],
      );
  };
  walk(x, []);
  expect(all).toBe(5040);
  expect(Math.abs(far / all - (found?.p ?? 1))).toBeLessThan(0.01);
});

// Wikipedia, "Holm–Bonferroni method", its example (from memory): 0.01, 0.04, 0.03, 0.005.
test("the textbook's four looked at together", () => {
  const corrected = holm([0.01, 0.04, 0.03, 0.005]);
  for (const [at, want] of [0.03, 0.06, 0.06, 0.02].entries()) {
    expect(corrected[at]).toBeCloseTo(want, 12);
  }
  expect(holm([])).toEqual([]);
});

test("corrected never falls below, keeps the order and stays a share", () => {
  const shares = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 20 });
  fc.assert(
    fc.property(shares, (ps) => {
      const corrected = holm(ps);
      for (const [at, p] of ps.entries()) {
        expect(corrected[at]).toBeGreaterThanOrEqual(p);
        expect(corrected[at]).toBeLessThanOrEqual(1);
        for (const [other, q] of ps.entries()) {
          if (q < p) expect(corrected[other]).toBeLessThanOrEqual(corrected[at] ?? 0);
        }
      }
    }),
  );
});
