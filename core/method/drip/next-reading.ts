import type { Spread } from "./bell-mixture.ts";
import { READING_SCATTER } from "./drip-cases.ts";
import { collectedBy, type DripCourse, timeToShare } from "./drip-course.ts";
import type { DripReading } from "./drip-readings.ts";

/** When another reading would help most, and what it is good for. */
export interface NextReading {
  /** ms since the drip began */
  readonly atMs: number;
  /**
   * `narrows`: it narrows the range most while there is time left to use it. `is-it-clogging`:
   * soon, to see whether the filter clogs. `nearly-through`: no reading would tell much more than
   * a look when it is nearly done.
   */
  readonly why: "narrows" | "is-it-clogging" | "nearly-through";
  /** Width of the 80 % range now and, as expected, after that reading: share of the time. */
  readonly widthNow: number;
  readonly widthAfter: number;
}

const TRIES = 10;
/** A reading is worth the walk when it narrows the range by a tenth. */
const WORTH = 0.9;

interface Drip {
  readonly courses: readonly DripCourse[];
  readonly readings: readonly DripReading[];
  readonly target: number;
  readonly throughAt: Spread;
  readonly clogging: boolean;
}

const mean = (of: readonly number[]): number => of.reduce((sum, x) => sum + x, 0) / of.length;

/** How much of the scatter of the end stays once a reading at a moment is known, 0 to 1. */
function scatterLeft(courses: readonly DripCourse[], ends: readonly number[], atMs: number) {
  const logs = courses.map((course) => Math.log(collectedBy(course, atMs)));
  const [middle, end] = [mean(logs), mean(ends)];
  const both = mean(logs.map((log, i) => (log - middle) * ((ends[i] ?? end) - end)));
  const readings = mean(logs.map((log) => (log - middle) ** 2)) + READING_SCATTER ** 2;
  const whole = mean(ends.map((one) => (one - end) ** 2));
  return whole === 0 ? 1 : Math.sqrt(Math.max(0, 1 - both ** 2 / (readings * whole)));
}

function mostUseful({ courses, target, throughAt }: Drip, from: number) {
  const ends = courses.map((course) => Math.log(timeToShare(course, target)));
  let best = { atMs: throughAt.p50, left: 1, worth: 0 };
  for (let attempt = 1; attempt < TRIES; attempt += 1) {
    const atMs = from + ((throughAt.p50 - from) * attempt) / TRIES;
    const left = scatterLeft(courses, ends, atMs);
    // A narrower range is worth the time that is left to use it.
    const worth = (1 - left) * (throughAt.p50 - atMs);
    if (worth > best.worth) best = { atMs, left, worth };
  }
  return best;
}

/**
 * When to read next: the moment that narrows the forecast most for the time left to use it.
 *
 * @param drip - the courses it may run, what was read, and the forecast
 * @source expected variance after one more reading, by linear regression over the courses; the
 * trade of width against time left is judgement
 */
export function nextReading(drip: Drip): NextReading {
  const { readings, throughAt, clogging } = drip;
  const last = readings.at(-1)?.atMs ?? 0;
  const widthNow = (throughAt.p90 - throughAt.p10) / throughAt.p50;
  if (clogging) {
    const gap = last - (readings.at(-2)?.atMs ?? 0);
    return { atMs: last + gap / 2, why: "is-it-clogging", widthNow, widthAfter: widthNow };
  }
  const { atMs, left } = mostUseful(drip, last);
  if (left > WORTH || throughAt.p50 <= last) {
    const end = Math.max(throughAt.p50, last);
    return { atMs: end, why: "nearly-through", widthNow, widthAfter: widthNow };
  }
  return { atMs, why: "narrows", widthNow, widthAfter: widthNow * left };
}
