import fc from "fast-check";
import { expect, test } from "vitest";
import { dripCases } from "../../../../core/method/drip/drip-cases.ts";
import { coursesOf } from "../../../../core/method/drip/drip-course.ts";
import { type DripCurve, dripCurve } from "../../../../core/method/drip/drip-curve.ts";
import { forecastDrip } from "../../../../core/method/drip/drip-forecast.ts";
import { seeded, simulateDrip } from "./simulated-drip.ts";

/** The forecast of a simulated drip, and its curve. */
function drawn(seed: number, shares: readonly number[]) {
  const { readings, total, trueMs } = simulateDrip({ kind: "cone", shares }, seeded(seed));
  const found = forecastDrip({ readings, total, shape: "cone" });
  const last = readings.at(-1);
  if (found.type === "none" || last === undefined) throw new RangeError("a drip was read");
  return { readings, last, found, trueMs };
}

/** What had truly come through by a moment, as a share. */
function shareAt(trueMs: (share: number) => number, atMs: number): number {
  let [low, high] = [0, 0.98];
  for (let turn = 0; turn < 40; turn += 1) {
    const middle = (low + high) / 2;
    if (trueMs(middle) < atMs) low = middle;
    else high = middle;
  }
  return low;
}

const times = (points: DripCurve["ahead"], at: "p10" | "p50" | "p90") =>
  points.map(({ atMs }) => atMs[at]);

test("the band leaves the last reading and ends at the forecast itself", () => {
  const { last, found } = drawn(3, [0.15, 0.3, 0.5]);
  const { fitted, ahead } = found.curve;
  expect(fitted.length).toBe(13);
  expect(ahead.length).toBe(13);
  expect(fitted[0]).toEqual({ ml: 0, atMs: 0 });
  expect(fitted.at(-1)?.atMs).toBe(last.atMs);
  expect(ahead[0]?.ml).toBe(fitted.at(-1)?.ml);
  expect(ahead.at(-1)).toEqual({ ml: found.target * found.totalMl.p50, atMs: found.throughAt });
  const width = (point = ahead[0]) => (point?.atMs.p90 ?? 0) - (point?.atMs.p10 ?? 0);
  expect(width()).toBeLessThan(0.02 * last.atMs);
  expect(width(ahead.at(-1))).toBeGreaterThan(0.1 * last.atMs);
});

test("the fitted line goes by the readings: within three times the scatter of a jug", () => {
  for (let seed = 1; seed <= 20; seed += 1) {
    const { readings, found } = drawn(seed, [0.15, 0.3, 0.5]);
    for (const { atMs, ml } of readings) {
      const points = found.curve.fitted;
      const after = points.findIndex((one) => one.atMs >= atMs);
      const [a, b] = [points[Math.max(0, after - 1)], points[after]];
      if (a === undefined || b === undefined) throw new RangeError("the curve holds its readings");
      const part = b.atMs === a.atMs ? 1 : (atMs - a.atMs) / (b.atMs - a.atMs);
      // The line is straight between its points: 1.25 % of the total off the law at the most.
      expect(Math.abs(a.ml + part * (b.ml - a.ml) - ml)).toBeLessThan(0.096 * ml + 60);
    }
  }
});

// 60 drips, each at three places ahead: the standard error of a share of 0.8 is about 0.05.
test("the band holds what then really came through, about 8 in 10 times", () => {
  let within = 0;
  let count = 0;
  for (let seed = 1; seed <= 60; seed += 1) {
    const { last, found, trueMs } = drawn(seed, [0.15, 0.3, 0.5]);
    for (const step of [6, 9, 12]) {
      const point = found.curve.ahead[step];
      if (point === undefined) continue;
      // The same part of the way from where it truly stood to the target.
      const from = shareAt(trueMs, last.atMs);
      const share = from + (step / 12) * (0.9 - from);
      const at = trueMs(share);
      within += at >= point.atMs.p10 && at <= point.atMs.p90 ? 1 : 0;
      count += 1;
    }
  }
  expect(count).toBe(180);
  expect(within / count).toBeGreaterThan(0.68);
  expect(within / count).toBeLessThan(0.97);
});

test("once the target is read, nothing is ahead", () => {
  const { found } = drawn(4, [0.3, 0.6, 0.96]);
  expect(found.curve.ahead).toEqual([]);
  expect(found.curve.fitted.length).toBe(13);
});

test("property: volumes and times only rise, and the band holds its middle", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1e6 }), (seed) => {
      const { readings, total } = simulateDrip({ kind: "cone", shares: [0.2, 0.4] }, seeded(seed));
      const last = readings.at(-1);
      if (last === undefined) throw new RangeError("a drip was read");
      const courses = coursesOf(dripCases(readings, total, "cone"));
      const throughAt = { p10: 3 * last.atMs, p50: 4 * last.atMs, p90: 9 * last.atMs };
      const curve = dripCurve({ courses, last, target: 0.9, totalMl: 4500, throughAt });
      for (const points of [curve.fitted, curve.ahead]) {
        const volumes = points.map(({ ml }) => ml);
        expect(volumes).toEqual(volumes.toSorted((a, b) => a - b));
      }
      for (const at of ["p10", "p50", "p90"] as const) {
        const seen = times(curve.ahead, at);
        expect(seen).toEqual(seen.toSorted((a, b) => a - b));
      }
      for (const { atMs } of curve.ahead) {
        expect(atMs.p10).toBeLessThanOrEqual(atMs.p50);
        expect(atMs.p50).toBeLessThanOrEqual(atMs.p90);
      }
      expect(Math.min(...times(curve.ahead, "p10"))).toBeGreaterThanOrEqual(last.atMs);
    }),
    { numRuns: 20 },
  );
});
