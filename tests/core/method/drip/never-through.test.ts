import { expect, test } from "vitest";
import { forecastDrip } from "../../../../core/method/drip/drip-forecast.ts";
import { mayNeverBeThrough } from "../../../../core/method/drip/never-through.ts";

const HOUR = 3_600_000;
const spread = (p50: number, p90: number) => ({ p10: 0, p50: p50 * HOUR, p90: p90 * HOUR });

test.each([
  ["a usual drip", 9, 14, false],
  ["to the hour two days", 30, 48, false],
  ["past two days", 30, 48.1, true],
  ["five times its middle", 2, 10, false],
  ["more than that", 2, 10.1, true],
])("%s: %d h, at the latest %d h: %s", (_, p50, p90, never) => {
  expect(mayNeverBeThrough(spread(p50, p90))).toBe(never);
});

test("a filter that has all but stopped may never be through; a sound one will", () => {
  const total = { expected: 4500, low: 4350, high: 4650 };
  const stuck = [400, 800, 1300, 1420, 1450].map((ml, i) => ({ atMs: HOUR * 2 ** i, ml }));
  const sound = [1500, 2200].map((ml, i) => ({ atMs: HOUR * 2 ** i, ml }));
  const never = [stuck, sound].map((readings) => {
    const found = forecastDrip({ readings, total, shape: "cone" });
    return found.type === "forecast" && mayNeverBeThrough(found.throughAt);
  });
  expect(never).toEqual([true, false]);
});
