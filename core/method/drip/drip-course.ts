import type { Spread } from "./bell-mixture.ts";
import type { DripCase } from "./drip-cases.ts";
import { shareThrough } from "./filtration-law.ts";

/** One way the drip may run: a case with its scale settled. */
export interface DripCourse {
  readonly drip: DripCase;
  /** ms per unit time */
  readonly scale: number;
}

/** What should have come through by a moment, ml. */
export interface CurvePoint extends Spread {
  /** ms since the drip began */
  readonly atMs: number;
}

const COURSES = 160;
const POINTS = 24;
/**
 * Middles of eight equal parts of a normal distribution (its quantiles at 1/16, 3/16 ...), in an
 * order that mixes them along the cases.
 */
const PLACES = [-1.534, 0.157, -0.489, 0.887, -0.157, 1.534, -0.887, 0.489];

/**
 * A few courses that stand for all cases, each as likely as the others: every case is taken as
 * often as its weight says, in even steps, so that nothing is left to chance.
 *
 * @param cases - one or more, their weights in any unit
 */
export function coursesOf(cases: readonly DripCase[]): readonly DripCourse[] {
  const step = cases.reduce((sum, { weight }) => sum + weight, 0) / COURSES;
  const courses: DripCourse[] = [];
  let passed = 0;
  for (const drip of cases) {
    passed += drip.weight;
    while ((courses.length + 0.5) * step < passed && courses.length < COURSES) {
      const place = PLACES[courses.length % PLACES.length] ?? 0;
      courses.push({ drip, scale: Math.exp(drip.lnScale + place * drip.sd) });
    }
  }
  return courses;
}

/**
 * What has come through by a moment on one course, ml.
 *
 * @param course - one way it may run
 * @param atMs - ms since the drip began, 0 or more
 */
export function collectedBy({ drip, scale }: DripCourse, atMs: number): number {
  return drip.total * shareThrough(drip.law, drip.resistance, atMs / scale);
}

const ranked = (sorted: readonly number[], share: number): number =>
  sorted[Math.floor(share * sorted.length)] ?? 0;

function volumesBy(courses: readonly DripCourse[], atMs: number): Spread {
  const sorted = courses.map((course) => collectedBy(course, atMs)).sort((a, b) => a - b);
  return { p10: ranked(sorted, 0.1), p50: ranked(sorted, 0.5), p90: ranked(sorted, 0.9) };
}

/**
 * The curve to draw: volume against time with its 80 % band, closer together where it is steep.
 *
 * @param courses - that stand for the forecast
 * @param untilMs - where the drawing ends, ms since the drip began
 * @returns 24 points, the first at 0
 */
export function dripCurve(courses: readonly DripCourse[], untilMs: number): readonly CurvePoint[] {
  return Array.from({ length: POINTS }, (_, point) => {
    const atMs = untilMs * (point / (POINTS - 1)) ** 1.5;
    return { atMs, ...volumesBy(courses, atMs) };
  });
}
