import { expect, test } from "vitest";
import { type DripCase, dripCases } from "../../../../core/method/drip/drip-cases.ts";
import { collectedBy, coursesOf, timeToShare } from "../../../../core/method/drip/drip-course.ts";
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

test("when a share has come through, and what has come through by then, agree", () => {
  const { readings, total } = simulateDrip({ kind: "cone", shares: [0.2, 0.4] }, seeded(5));
  const courses = coursesOf(dripCases(readings, total, "cone"));
  for (const course of courses) {
    for (const share of [0.1, 0.5, 0.9]) {
      const ml = collectedBy(course, timeToShare(course, share));
      // The drawing is straight between the steps of its tables: within 0.0125 of the law.
      expect(Math.abs(ml / course.drip.total - share)).toBeLessThan(0.0125);
    }
  }
});
