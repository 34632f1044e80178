import fc from "fast-check";
import { jStat } from "jstat";
import { expect, test } from "vitest";
import { type Lesson, shrunk } from "../../../../core/logbook/learn/shrunk.ts";
import { CURD_BELIEF, coverage, outlierBias } from "../../../support/world/simulated-batches.ts";

const own = (values: readonly number[], group = "a"): readonly Lesson[] =>
  values.map((value) => ({ group, value }));

const SEVEN = own([0.41, 0.44, 0.4, 0.43, 0.46, 0.42, 0.45]);

test("before any batch it is what was stated, to the last digit", () => {
  expect(shrunk([], CURD_BELIEF, "a")).toEqual({
    mean: 0.35,
    low: expect.closeTo(0.25, 9),
    high: expect.closeTo(0.45, 9),
    batches: 0,
    house: 0,
  });
});

// By hand, for four batches alike in the middle of the belief, in units of the stated variance: each
// weighs 5/4; the batches' own variance is 4 x 0.35 / (4 + 4) = 0.175; their kind goes with them by
// 20.41 / (20.41 + 1/0.15) = 0.7538, the house's middle is off by 1 / (2 + 1 / (0.15 + 0.049)) =
// 0.1423; together 0.175 + 0.2462 x 0.15 + 0.2462^2 x 0.1423 = 0.2206, of which the root is 0.4696.
test("four batches alike narrow the range to less than half of what was stated", () => {
  const { low, mean, high } = shrunk(own([1, 1, 1, 1]), { mean: 1, half: 1 }, "a");
  expect(mean).toBeCloseTo(1, 9);
  expect((high - low) / 2).toBeCloseTo(0.4696, 3);
  // Another kind of the same house: 0.175 + 0.15 + 0.1423 = 0.4673, of which the root is 0.6836.
  const other = shrunk(own([1, 1, 1, 1]), { mean: 1, half: 1 }, "b");
  expect((other.high - other.low) / 2).toBeCloseTo(0.6836, 3);
});

// jstat 1.9.6: a general statistics library from the npm registry.
test("the interval's quantile is the library's", () => {
  const { mean, high } = shrunk([], { mean: 0, half: jStat.studentt.inv(0.9, 4) }, "a");
  expect(high - mean).toBeCloseTo(jStat.studentt.inv(0.9, 4), 9);
  expect(jStat.studentt.inv(0.9, 4)).toBeCloseTo(1.533206, 5);
});

/**
 * The middle of one kind of batch by brute force: the belief times the library's t density of every
 * batch, summed over a grid, for the spread that the closed form settled on.
 */
function byGrid(values: readonly number[], batch: number): number {
  const between = ((0.5 + 0.15) * (CURD_BELIEF.half / jStat.studentt.inv(0.9, 4)) ** 2) ** 0.5;
  let [sum, weighed] = [0, 0];
  for (let at = 0; at <= 1.2; at += 0.0005) {
    let density = jStat.normal.pdf(at, CURD_BELIEF.mean, between);
    for (const value of values) density *= jStat.studentt.pdf((value - at) / batch, 4);
    sum += density;
    weighed += density * at;
  }
  return weighed / sum;
}

test("the middle agrees with a posterior summed over a grid with the library's densities", () => {
  for (const values of [
    [0.41, 0.44, 0.4],
    SEVEN.map(({ value }) => value),
    [0.2, 0.42, 0.41, 0.4],
  ]) {
    const { mean, high } = shrunk(own(values), CURD_BELIEF, "a");
    // What is left of the half interval is nearly all spread from batch to batch.
    const batch = ((high - mean) / jStat.studentt.inv(0.9, 4)) * 0.93;
    expect(mean).toBeGreaterThan(byGrid(values, batch) - 0.006);
    expect(mean).toBeLessThan(byGrid(values, batch) + 0.006);
  }
});

test("with many even batches it is the library's mean of them", () => {
  const many = Array.from({ length: 200 }, (_, at) => 0.42 + 0.03 * Math.sin(at * 2.4));
  expect(shrunk(own(many), CURD_BELIEF, "a").mean).toBeCloseTo(jStat.mean(many), 3);
});

test("8 in 10 next batches lie in the interval, whatever was learnt from: known truth", () => {
  const measured = [0, 3, 7, 12, 30].map((batches) => ({
    batches,
    same: coverage(7, 700, batches, "a"),
    few: coverage(8, 700, batches, "b"),
    fresh: coverage(9, 700, batches, "c"),
  }));
  for (const { same, few, fresh } of measured) {
    for (const share of [same, few, fresh]) {
      expect(share).toBeGreaterThan(0.75);
      expect(share).toBeLessThan(0.9);
    }
  }
}, 30_000);

test("one gross outlier hardly moves it, where it would drag a mean along", () => {
  for (const batches of [4, 7, 20]) {
    const bias = outlierBias(3, 250, batches, 1.2);
    expect(Math.abs(bias.clean)).toBeLessThan(0.004);
    expect(Math.abs(bias.odd)).toBeLessThan(0.008);
    expect(bias.plainMean).toBeGreaterThan(0.03);
  }
}, 30_000);

test("a failed batch among seven neither moves nor widens it much", () => {
  const good = shrunk(SEVEN, CURD_BELIEF, "a");
  const spoiled = shrunk([...SEVEN, ...own([1.9])], CURD_BELIEF, "a");
  expect(Math.abs(spoiled.mean - good.mean)).toBeLessThan(0.005);
  expect(spoiled.high - spoiled.low).toBeLessThan(1.35 * (good.high - good.low));
});

test("a kind without batches goes by the house, with a wider interval", () => {
  const fresh = shrunk(SEVEN, CURD_BELIEF, "b");
  const known = shrunk(SEVEN, CURD_BELIEF, "a");
  expect(fresh).toMatchObject({ batches: 0, house: 7 });
  expect(fresh.mean).toBeGreaterThan(0.37);
  expect(fresh.mean).toBeLessThan(known.mean);
  expect(fresh.high - fresh.low).toBeGreaterThan(known.high - known.low);
});

const figures = fc.array(fc.double({ min: -3, max: 3, noNaN: true }), { maxLength: 25 });

test("whatever comes in, it is a number between what was seen and what was believed", () => {
  fc.assert(
    fc.property(figures, figures, (a, b) => {
      const lessons = [...own(a), ...own(b, "b")];
      const { mean, low, high } = shrunk(lessons, CURD_BELIEF, "a");
      const all = [CURD_BELIEF.mean, ...a, ...b];
      expect(low).toBeLessThan(mean);
      expect(high).toBeGreaterThan(mean);
      expect(mean).toBeGreaterThanOrEqual(Math.min(...all) - 1e-9);
      expect(mean).toBeLessThanOrEqual(Math.max(...all) + 1e-9);
    }),
  );
});

test("the order in which batches come in changes nothing; scale and place carry over", () => {
  fc.assert(
    fc.property(figures, fc.double({ min: 0.5, max: 4, noNaN: true }), (a, by) => {
      const forth = shrunk(own(a), CURD_BELIEF, "a");
      expect(shrunk(own(a.toReversed()), CURD_BELIEF, "a").mean).toBeCloseTo(forth.mean, 9);
      const belief = { mean: by * CURD_BELIEF.mean + 2, half: by * CURD_BELIEF.half };
      const moved = shrunk(own(a.map((one) => by * one + 2)), belief, "a");
      expect(moved.mean).toBeCloseTo(by * forth.mean + 2, 6);
      expect(moved.high).toBeCloseTo(by * forth.high + 2, 6);
    }),
  );
});

test("a belief without spread and a figure that is none are refused", () => {
  expect(() => shrunk([], { mean: 0.35, half: 0 }, "a")).toThrow(RangeError);
  expect(() => shrunk(own([Number.NaN]), CURD_BELIEF, "a")).toThrow(RangeError);
});
