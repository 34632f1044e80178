import { type DripCase, lnTimeOf } from "./drip-cases.ts";
import { shareThrough } from "./filtration-law.ts";

/** One way the drip may run: a case with its scale settled. */
export interface DripCourse {
  readonly drip: DripCase;
  /** ms per unit time */
  readonly scale: number;
}

const COURSES = 160;
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

/**
 * When a share has come through on one course.
 *
 * @param course - one way it may run
 * @param share - of its total, 0 or more
 * @returns ms since the drip began
 */
export const timeToShare = ({ drip, scale }: DripCourse, share: number): number =>
  scale * Math.exp(lnTimeOf(drip, share) - drip.lnScale);
