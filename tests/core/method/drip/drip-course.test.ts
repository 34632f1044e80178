import fc from "fast-check";
import { expect, test } from "vitest";
import { type DripCase, dripCases } from "../../../../core/method/drip/drip-cases.ts";
import { collectedBy, coursesOf, dripCurve } from "../../../../core/method/drip/drip-course.ts";
import { filtrationLaw } from "../../../../core/method/drip/filtration-law.ts";
import { seeded, simulateDrip } from "./simulated-drip.ts";

const even = (total: number, weight: number): DripCase => ({
  law: filtrationLaw(0, 1),
  clogs: false,
  total,
  resistance: { medium: 1, cake: 0 },
  lnScale: Math.log(1000),
  sd: 1e-9,
  weight,
});

test("a case is taken as often as its weight says", () => {
  const courses = coursesOf([even(100, 3), even(200, 1)]);
  expect(courses.length).toBe(160);
  expect(courses.filter(({ drip }) => drip.total === 200).length).toBe(40);
  const scales = coursesOf([{ ...even(100, 1), sd: 0.1 }]).map(({ scale }) => Math.log(scale));
  const mean = scales.reduce((sum, x) => sum + x, 0) / 160;
  const variance = scales.reduce((sum, x) => sum + (x - mean) ** 2, 0) / 160;
  expect(mean).toBeCloseTo(Math.log(1000), 9);
  // The middles of eight equal parts of a bell have 0.96 of its spread.
  expect(Math.sqrt(variance)).toBeCloseTo(0.096, 2);
});

test("an even drip: half of the volume at half of the time", () => {
  const [course] = coursesOf([even(800, 1)]);
  if (!course) throw new RangeError("a case must give a course");
  expect(collectedBy(course, 0)).toBe(0);
  expect(collectedBy(course, 500)).toBeCloseTo(400, 0);
  expect(collectedBy(course, 1e9)).toBeCloseTo(800, -1);
});

test("the curve starts at nothing, only rises, and its band holds its middle", () => {
  const seeds = fc.integer({ min: 1, max: 1e6 });
  fc.assert(
    fc.property(seeds, (seed) => {
      const { readings, total } = simulateDrip({ kind: "cone", shares: [0.2, 0.4] }, seeded(seed));
      const curve = dripCurve(coursesOf(dripCases(readings, total, "cone")), 1e8);
      expect(curve.length).toBe(24);
      expect(curve[0]).toEqual({ atMs: 0, p10: 0, p50: 0, p90: 0 });
      expect(curve.at(-1)?.atMs).toBe(1e8);
      // Closer together at the start, where it is steep.
      expect(curve[1]?.atMs).toBeLessThan(0.3 * (1e8 / 23));
      for (const [i, point] of curve.entries()) {
        const before = curve[i - 1] ?? { atMs: -1, p10: 0, p50: 0, p90: 0 };
        expect(point.atMs).toBeGreaterThan(before.atMs);
        expect(point.p50).toBeGreaterThanOrEqual(before.p50);
        expect(point.p10).toBeLessThanOrEqual(point.p50);
        expect(point.p50).toBeLessThanOrEqual(point.p90);
      }
    }),
    { numRuns: 20 },
  );
});
