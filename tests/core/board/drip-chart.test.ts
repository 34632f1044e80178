import fc from "fast-check";
import { expect, test } from "vitest";
import { dripChartOf } from "../../../core/board/drip-chart.ts";
import { type DripForecast, forecastDrip } from "../../../core/method/drip/drip-forecast.ts";
import type { VesselShape } from "../../../core/method/drip/vessel-shape.ts";

const HOUR = 3_600_000;
const FROM = 1_000_000 * HOUR;
const TOTAL = { expected: 4500, low: 4350, high: 4650 };
const AXES = { until: FROM, zoneMs: 0, unitMl: 1 };
const visit = { key: "slow-drip#1", step: "slow-drip", startedAt: FROM };

type Read = readonly (readonly [hours: number, ml: number])[];

function forecastOf(read: Read, shape: VesselShape = "cone"): DripForecast {
  const readings = read.map(([hours, ml]) => ({ atMs: hours * HOUR, ml }));
  const found = forecastDrip({ readings, total: TOTAL, shape });
  if (found.type === "none") throw new RangeError(`expected a forecast, got ${found.why}`);
  return found;
}

function chartOf(read: Read, axes: Partial<typeof AXES> = {}) {
  const forecast = forecastOf(read);
  const collected = read.map(([hours, ml]) => ({ at: FROM + hours * HOUR, ml }));
  return { forecast, chart: dripChartOf(visit, collected, forecast, { ...AXES, ...axes }) };
}

const EARLY: Read = [
  [1, 1500],
  [2, 2200],
];

test("readings stand where they were read, and the drawing ends where the forecast does", () => {
  const { forecast, chart } = chartOf(EARLY);
  expect(chart.readings).toEqual([
    { at: FROM + HOUR, ml: 1500 },
    { at: FROM + 2 * HOUR, ml: 2200 },
  ]);
  const { throughAt, totalMl } = forecast;
  expect(chart.from).toBe(FROM);
  expect(chart.targetMl).toBeCloseTo(0.9 * totalMl.p50, 9);
  expect(chart.ahead.at(-1)).toEqual({
    ml: chart.targetMl,
    early: FROM + throughAt.p10,
    middle: FROM + throughAt.p50,
    late: FROM + throughAt.p90,
  });
  const end = Math.min(throughAt.p90, 2 * throughAt.p50);
  expect(chart.to - FROM).toBeCloseTo(1.05 * end, -1);
  expect(chart.mostMl).toBeGreaterThan(chart.targetMl);
  expect(chart.unending).toBe(false);
});

test("it always reaches to now", () => {
  const until = FROM + 60 * HOUR;
  expect(chartOf(EARLY, { until }).chart.to).toBeGreaterThan(until);
});

test("a reading that the forecast leaves out is drawn apart; one from before the drip is not", () => {
  const { chart } = chartOf([[-1, 50], ...EARLY, [2.5, 900]]);
  expect(chart.keptOut).toEqual([{ at: FROM + 2.5 * HOUR, ml: 900 }]);
  expect(chart.readings.length).toBe(2);
});

test("once the target is read there is nothing ahead", () => {
  const { chart } = chartOf([...EARLY, [12, 4300]]);
  expect(chart.ahead).toEqual([]);
  expect(chart.unending).toBe(false);
  expect(chart.to).toBe(FROM + Math.round(1.05 * 12 * HOUR));
});

test("where no end is in sight it is drawn to three times what has gone by", () => {
  const { forecast, chart } = chartOf([
    [1, 400],
    [2, 800],
    [4, 1300],
    [8, 1420],
    [16, 1450],
  ]);
  expect(forecast.throughAt.p90).toBeGreaterThan(48 * HOUR);
  expect(chart.unending).toBe(true);
  expect(chart.to).toBeLessThanOrEqual(FROM + 1.05 * 48 * HOUR);
});

test("marks are in the house's unit, by the clock on the wall", () => {
  const zoneMs = 1.5 * HOUR;
  const { chart } = chartOf(EARLY, { unitMl: 30, zoneMs });
  expect(chart.mlTicks.length).toBeGreaterThan(1);
  for (const ml of chart.mlTicks) expect(ml % 300).toBe(0);
  expect(chart.timeTicks.length).toBeGreaterThan(1);
  for (const at of chart.timeTicks) expect((at + zoneMs) % HOUR).toBe(0);
});

test("property: curves only rise, the band holds its middle, and all that was read is inside", () => {
  const anyRead = fc
    .array(
      fc.record({
        after: fc.double({ min: 0.05, max: 8, noNaN: true }),
        more: fc.double({ min: 0, max: 1500, noNaN: true }),
      }),
      { minLength: 2, maxLength: 7 },
    )
    .map((gaps) => {
      let [hours, ml] = [0, 20];
      return gaps.map(({ after, more }) => {
        hours += after;
        ml += more;
        return [hours, ml] as const;
      });
    });
  fc.assert(
    fc.property(anyRead, (read) => {
      const { chart } = chartOf(read);
      let before = { ml: -1, early: 0, middle: 0, late: 0 };
      for (const point of chart.ahead) {
        expect(point.early).toBeLessThanOrEqual(point.middle);
        expect(point.middle).toBeLessThanOrEqual(point.late);
        for (const when of ["ml", "early", "middle", "late"] as const) {
          expect(point[when]).toBeGreaterThanOrEqual(before[when]);
        }
        before = point;
      }
      const times = chart.fitted.map(({ at }) => at);
      expect(times).toEqual(times.toSorted((a, b) => a - b));
      for (const { at, ml } of chart.readings) {
        expect(at).toBeGreaterThanOrEqual(chart.from);
        expect(at).toBeLessThan(chart.to);
        expect(ml).toBeLessThan(chart.mostMl);
      }
    }),
    { numRuns: 40 },
  );
});
