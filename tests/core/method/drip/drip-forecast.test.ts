import { beforeAll, expect, test } from "vitest";
import {
  type DripForecast,
  type DripSoFar,
  forecastDrip,
} from "../../../../core/method/drip/drip-forecast.ts";
import type { VesselShape } from "../../../../core/method/drip/vessel-shape.ts";
import published from "../../../published/filtration.json";
import { SCHEDULES, type Score, scoreForecasts } from "./drip-score.ts";
import { kindOf, seeded, simulateDrip } from "./simulated-drip.ts";

const SHAPES: readonly VesselShape[] = ["topped-up", "straight", "cone", "unknown"];
const HOUR = 3_600_000;

function forecast(drip: DripSoFar): DripForecast {
  const found = forecastDrip(drip);
  if (found.type === "none") throw new RangeError(`expected a forecast, got none: ${found.why}`);
  return found;
}

// The printed runs as drips: a tenth of the total is still to come when the data end.
test.each(published.runs)("foretells the end of a published run: $name", (run) => {
  const end = run.volumes.at(-1) ?? 0;
  const endMs = 1000 * (run.seconds.at(-1) ?? 0);
  const expected = (1e6 * end) / 0.9;
  const readings = run.volumes
    .map((volume, i) => ({ atMs: 1000 * (run.seconds[i] ?? 0), ml: 1e6 * volume }))
    .filter(({ ml }) => ml < 0.6 * expected);
  const total = { expected, low: 0.97 * expected, high: 1.03 * expected };
  const { throughAt, blinding } = forecast({ readings, total, shape: "topped-up" });
  expect(Math.abs(throughAt.p50 / endMs - 1)).toBeLessThan(0.1);
  expect(throughAt.p10).toBeLessThan(endMs);
  expect(throughAt.p90).toBeGreaterThan(endMs);
  expect(blinding.verdict).toBe("no");
});

// 100 drips a row: the standard error of a share of 0.85 is 0.036.
const scores = new Map<string, Score>();
beforeAll(() => {
  for (const { kind, shape } of published.accuracy.rows) {
    const known = SHAPES.find((one) => one === shape) ?? "unknown";
    scores.set(kind, scoreForecasts(kindOf(kind), known, SCHEDULES.three, 100, 7));
  }
});

test.each(published.accuracy.rows)(
  "as exact as the reference: $kind",
  ({ kind, median, ninth }) => {
    const score = scores.get(kind);
    expect(score?.median).toBeGreaterThan(0.5 * median);
    expect(score?.median).toBeLessThan(1.35 * median);
    expect(score?.ninth).toBeGreaterThan(0.5 * ninth);
    expect(score?.ninth).toBeLessThan(1.35 * ninth);
  },
);

test("the 80 % range holds about 80 %", () => {
  const late = scoreForecasts("straight", "straight", SCHEDULES.six, 100, 8);
  const rows = [...scores.values(), late];
  const inside = rows.reduce((sum, score) => sum + score.inside, 0) / rows.length;
  expect(inside).toBeGreaterThan(0.75);
  expect(inside).toBeLessThan(0.9);
  // What it misses lies on both sides.
  for (const side of ["before", "after"] as const) {
    expect(rows.reduce((sum, score) => sum + score[side], 0) / rows.length).toBeGreaterThan(0.02);
  }
});

test("more readings, a narrower range", () => {
  const { readings, total } = simulateDrip({ kind: "cone", shares: SCHEDULES.six }, seeded(3));
  const widths = [2, 4, 6].map((count) => {
    const { p10, p90 } = forecast({
      readings: readings.slice(0, count),
      total,
      shape: "cone",
    }).throughAt;
    return p90 / p10;
  });
  expect(widths[1]).toBeLessThan(widths[0] ?? 0);
  expect(widths[2]).toBeLessThan(widths[1] ?? 0);
});

test("a vessel kept topped up is through before one left to drain, unknown lies between", () => {
  const readings = [
    { atMs: HOUR, ml: 1000 },
    { atMs: 3 * HOUR, ml: 2000 },
  ];
  const total = { expected: 4500, low: 4400, high: 4600 };
  const at = (shape: VesselShape) => forecast({ readings, total, shape }).throughAt.p50;
  expect(at("topped-up")).toBeLessThan(at("unknown"));
  expect(at("unknown")).toBeLessThan(at("straight"));
});

test("without news the total is the plan's, with its range", () => {
  const total = { expected: 4500, low: 4350, high: 4650 };
  const readings = [
    { atMs: HOUR, ml: 1000 },
    { atMs: 3 * HOUR, ml: 2000 },
  ];
  const { p10, p50, p90 } = forecast({ readings, total, shape: "topped-up" }).totalMl;
  expect(p50).toBeCloseTo(4500, -2);
  expect(p10).toBeCloseTo(4350, -2);
  expect(p90).toBeCloseTo(4650, -2);
});

test("what was read as through is through, what was not is not", () => {
  const total = { expected: 1000, low: 990, high: 1010 };
  const readings = [100, 300, 500, 940].map((ml, i) => ({ atMs: (i + 1) * HOUR, ml }));
  const { p10, p90 } = forecast({ readings, total, shape: "straight" }).throughAt;
  expect(p10).toBeGreaterThanOrEqual(3 * HOUR);
  expect(p90).toBeLessThanOrEqual(4 * HOUR);
});

test("a blinding filter: a late and wide forecast, and a look soon", () => {
  const readings = [100, 200, 300, 400, 430].map((ml, i) => ({ atMs: HOUR * 2 ** i, ml }));
  const total = { expected: 1000, low: 970, high: 1030 };
  const { blinding, throughAt, nextReading, curve } = forecast({ readings, total, shape: "cone" });
  expect(blinding.verdict).toBe("yes");
  expect(throughAt.p50).toBeGreaterThan(40 * HOUR);
  expect(nextReading).toMatchObject({ why: "is-it-clogging", atMs: 20 * HOUR });
  expect(curve.ahead.at(-1)?.atMs).toEqual(throughAt);
});

test("too little: nothing read, and one reading that says when to read again", () => {
  const total = { expected: 4500, low: 4400, high: 4600 };
  expect(forecastDrip({ readings: [], total, shape: "cone" })).toEqual({
    type: "none",
    why: "no-reading",
    keptOut: [],
  });
  const readings = [
    { atMs: HOUR, ml: 800 },
    { atMs: 2 * HOUR, ml: 700 },
  ];
  const one = forecastDrip({ readings, total, shape: "cone" });
  expect(one).toMatchObject({ type: "none", why: "one-reading" });
  expect(one.keptOut).toEqual([{ atMs: 2 * HOUR, ml: 700, why: "lower-than-before" }]);
  if (one.type === "forecast" || one.why === "no-reading") throw new RangeError("one was read");
  expect(one.nextReading.atMs).toBeGreaterThan(HOUR);
});

test.each([
  [{ expected: 0, low: 0, high: 0 }, 0.9, "the expected total in ml"],
  [{ expected: 1000, low: 1001, high: 1100 }, 0.9, "the low end"],
  [{ expected: 1000, low: 900, high: 999 }, 0.9, "the high end"],
  [{ expected: 1000, low: 900, high: 1100 }, 0.97, "the share that counts as through"],
  [{ expected: 1000, low: 900, high: Number.NaN }, 0.9, "the high end"],
])("refuses %o to %d", (total, target, message) => {
  expect(() => forecastDrip({ readings: [], total, shape: "cone", target })).toThrow(message);
});

test("where clogging is suspected the next look asks for it, and nowhere else", () => {
  const verdicts = new Set<string>();
  for (let last = 461; last <= 700; last += 3) {
    const ml = [200, 350, 460, last];
    const readings = ml.map((one, at) => ({ atMs: (at + 1) * HOUR, ml: one }));
    const forecast = forecastDrip({
      readings,
      total: { expected: 1500, low: 1450, high: 1550 },
      shape: "topped-up",
    });
    if (forecast.type !== "forecast") throw new Error("four readings make a forecast");
    const { verdict } = forecast.blinding;
    verdicts.add(verdict);
    expect(forecast.nextReading.why === "is-it-clogging").toBe(verdict !== "no");
  }
  expect(verdicts).toContain("suspected");
});
