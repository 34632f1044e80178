import { expect, test } from "vitest";
import { dripCases } from "../../../../core/method/drip/drip-cases.ts";
import { coursesOf } from "../../../../core/method/drip/drip-course.ts";
import { nextReading } from "../../../../core/method/drip/next-reading.ts";
import { timeBy } from "./simulated-drip.ts";

const time = timeBy((f) => (0.3 + f) / (1 - f));
const HOUR = 3_600_000;
const TOTAL = { expected: 4500, low: 4350, high: 4650 };

function drip(shares: readonly number[], clogging = false) {
  const readings = shares.map((f) => ({ atMs: time(f) * HOUR, ml: 4500 * f }));
  const courses = coursesOf(dripCases(readings, TOTAL, "cone"));
  const end = time(0.9) * HOUR;
  const throughAt = { p10: 0.7 * end, p50: end, p90: 1.4 * end };
  return { courses, readings, target: 0.9, throughAt, clogging };
}

test("early on it asks for a reading well before the end, and says what that is worth", () => {
  const asked = drip([0.15]);
  const next = nextReading(asked);
  expect(next.why).toBe("narrows");
  expect(next.atMs).toBeGreaterThan(time(0.15) * HOUR);
  expect(next.atMs).toBeLessThan(0.6 * asked.throughAt.p50);
  expect(next.widthNow).toBeCloseTo(0.7, 9);
  expect(next.widthAfter).toBeLessThan(0.8 * next.widthNow);
});

test("it always asks for a moment between the last reading and the end", () => {
  const asked = [[0.15], [0.15, 0.3], [0.15, 0.3, 0.5]].map((shares) => nextReading(drip(shares)));
  for (const [i, next] of asked.entries()) {
    expect(next.atMs).toBeGreaterThan(time([0.15, 0.3, 0.5][i] ?? 1) * HOUR);
    expect(next.atMs).toBeLessThan(time(0.9) * HOUR);
  }
});

test("when hardly anything is left to learn, it asks at the end", () => {
  const asked = drip([0.1, 0.3, 0.5, 0.6, 0.7, 0.8, 0.86, 0.89]);
  const next = nextReading(asked);
  expect(next.why).toBe("nearly-through");
  expect(next.atMs).toBe(asked.throughAt.p50);
  expect(next.widthAfter).toBe(next.widthNow);
});

test("already through: now", () => {
  const asked = drip([0.2, 0.5, 0.95]);
  expect(nextReading(asked)).toMatchObject({ why: "nearly-through", atMs: time(0.95) * HOUR });
});

test("a filter that may be clogging is looked at soon: after half the last gap", () => {
  const next = nextReading(drip([0.2, 0.4], true));
  expect(next.why).toBe("is-it-clogging");
  expect(next.atMs / HOUR).toBeCloseTo(time(0.4) + (time(0.4) - time(0.2)) / 2, 9);
});
