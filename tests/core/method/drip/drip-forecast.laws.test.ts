import fc from "fast-check";
import { expect, test } from "vitest";
import {
  type DripForecast,
  type DripSoFar,
  forecastDrip,
} from "../../../../core/method/drip/drip-forecast.ts";
import type { VesselShape } from "../../../../core/method/drip/vessel-shape.ts";
import { SCHEDULES } from "./drip-score.ts";
import { kindOf, seeded, simulateDrip } from "./simulated-drip.ts";

const SHAPES: readonly VesselShape[] = ["topped-up", "straight", "cone", "unknown"];

function forecast(drip: DripSoFar): DripForecast {
  const found = forecastDrip(drip);
  if (found.type === "none") throw new RangeError(`expected a forecast, got none: ${found.why}`);
  return found;
}

const anyReadings = fc
  .array(
    fc.record({
      after: fc.double({ min: 1, max: 1e9, noNaN: true }),
      more: fc.double({ min: 0, max: 4000, noNaN: true }),
    }),
    { minLength: 2, maxLength: 8 },
  )
  .map((gaps) => {
    let [atMs, ml] = [0, 10];
    return gaps.map(({ after, more }) => {
      atMs += after;
      ml += more;
      return { atMs, ml };
    });
  });
const anyTotal = fc
  .tuple(
    fc.double({ min: 300, max: 9000, noNaN: true }),
    fc.double({ min: 0, max: 1, noNaN: true }),
    fc.double({ min: 0, max: 1, noNaN: true }),
  )
  .map(([expected, down, up]) => ({
    expected,
    low: expected * (1 - down),
    high: expected * (1 + up),
  }));

test("any readings that never fall give finite figures in order", () => {
  fc.assert(
    fc.property(anyReadings, anyTotal, fc.constantFrom(...SHAPES), (readings, total, shape) => {
      const found = forecastDrip({ readings, total, shape });
      expect(JSON.stringify(found)).not.toContain("null");
      if (found.type === "none") return;
      const drawn = found.curve.ahead.map(({ atMs }) => atMs);
      for (const { p10, p50, p90 } of [found.throughAt, found.totalMl, ...drawn]) {
        expect(p10).toBeGreaterThanOrEqual(0);
        expect(p10).toBeLessThanOrEqual(p50);
        expect(p50).toBeLessThanOrEqual(p90);
      }
      expect(found.nextReading.atMs).toBeGreaterThanOrEqual(readings.at(-1)?.atMs ?? 0);
    }),
  );
});

const near = (got: number, want: number) => expect(got / want).toBeCloseTo(1, 3);
const factors = fc.double({ min: 0.01, max: 100, noNaN: true });

test("other units of time or volume, the same forecast", () => {
  fc.assert(
    fc.property(anyReadings, anyTotal, factors, factors, (readings, total, slow, big) => {
      const first = forecastDrip({ readings, total, shape: "unknown" });
      const scaled = forecastDrip({
        readings: readings.map(({ atMs, ml }) => ({ atMs: atMs * slow, ml: ml * big })),
        total: { expected: total.expected * big, low: total.low * big, high: total.high * big },
        shape: "unknown",
      });
      expect(scaled.type).toBe(first.type);
      if (first.type === "none" || scaled.type === "none") return;
      near(scaled.throughAt.p50, first.throughAt.p50 * slow);
      near(scaled.throughAt.p90, first.throughAt.p90 * slow);
      near(scaled.totalMl.p50, first.totalMl.p50 * big);
      expect(scaled.blinding.verdict).toBe(first.blinding.verdict);
    }),
    { numRuns: 50 },
  );
});

test("more collected by the same times, through sooner", () => {
  const kinds = fc.constantFrom("topped-up", "straight", "cone");
  const more = fc.double({ min: 1.001, max: 1.1, noNaN: true });
  const seeds = fc.integer({ min: 1, max: 1e6 });
  fc.assert(
    fc.property(kinds, more, seeds, fc.integer({ min: 2, max: 6 }), (kind, by, seed, count) => {
      const shares = SCHEDULES.six.slice(0, count);
      const { readings, total } = simulateDrip({ kind: kindOf(kind), shares }, seeded(seed));
      const shape = kindOf(kind) === "cone" ? "cone" : "unknown";
      const first = forecast({ readings, total, shape }).throughAt.p50;
      const fuller = readings.map(({ atMs, ml }) => ({ atMs, ml: ml * by }));
      // Once it was read as through, no volume makes it sooner.
      const sooner = forecast({ readings: fuller, total, shape }).throughAt.p50;
      expect(sooner).toBeLessThanOrEqual(first * (1 + 1e-6));
    }),
    { numRuns: 60 },
  );
});
