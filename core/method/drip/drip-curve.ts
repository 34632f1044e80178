import type { Spread } from "./bell-mixture.ts";
import { FULL_SHARE } from "./drip-cases.ts";
import { collectedBy, type DripCourse, timeToShare } from "./drip-course.ts";
import type { DripReading } from "./drip-readings.ts";

/** A place on the way ahead: its volume, and when it is reached, with its 80 % range. */
export interface CurvePoint {
  /** ml collected */
  readonly ml: number;
  /** ms since the drip began */
  readonly atMs: Spread;
}

/** A drip to draw: what the readings show, and what is to come. */
export interface DripCurve {
  /** The likeliest course, from nothing to the moment of the last reading. */
  readonly fitted: readonly DripReading[];
  /** From there to the target; empty once that is read. */
  readonly ahead: readonly CurvePoint[];
}

/** What a curve is drawn from. */
interface Drawn {
  readonly courses: readonly DripCourse[];
  readonly last: DripReading;
  readonly target: number;
  readonly totalMl: number;
  readonly throughAt: Spread;
}

const STEPS = 12;

const ranked = (sorted: readonly number[], share: number): number =>
  sorted[Math.floor(share * sorted.length)] ?? 0;

function spreadOf(figures: readonly number[]): Spread {
  const sorted = figures.toSorted((a, b) => a - b);
  return { p10: ranked(sorted, 0.1), p50: ranked(sorted, 0.5), p90: ranked(sorted, 0.9) };
}

const fittedAt = (courses: readonly DripCourse[], atMs: number): DripReading => ({
  atMs,
  ml: spreadOf(courses.map((course) => collectedBy(course, atMs))).p50,
});

/** Each course goes its own way, from where it stands to the target share of its own total. */
function timesTo({ courses, last, target }: Drawn, way: number): Spread {
  return spreadOf(
    courses.map((course) => {
      const from = Math.min(collectedBy(course, last.atMs) / course.drip.total, FULL_SHARE);
      return timeToShare(course, from + way * Math.max(0, target - from));
    }),
  );
}

function aheadOf(drawn: Drawn, from: number): readonly CurvePoint[] {
  const { last, target, totalMl, throughAt } = drawn;
  const to = target * totalMl;
  return Array.from({ length: STEPS + 1 }, (_, step) => {
    const way = step / STEPS;
    const times = way < 1 ? timesTo(drawn, way) : throughAt;
    const held = (when: keyof Spread): number =>
      Math.max(last.atMs, Math.min(times[when], throughAt[when]));
    return {
      ml: from + way * (to - from),
      atMs: { p10: held("p10"), p50: held("p50"), p90: held("p90") },
    };
  });
}

/**
 * The curve to draw: the likeliest course of what was read, and from there when each volume will
 * have come through, with its 80 % band. The band ends where the forecast says, so that drawing and
 * sentence agree.
 *
 * @param drawn - courses that stand for the forecast, the last reading, and the forecast
 * @returns 13 points to the last reading, and 13 on from it where the target is not read yet;
 *   volumes and times only rise
 * @limits a picture: the 80 % range of 160 courses, about 1 % of the time off the forecast's own
 */
export function dripCurve(drawn: Drawn): DripCurve {
  const { courses, last, target, totalMl } = drawn;
  // Closer together at the start, where it is steep.
  const fitted = Array.from({ length: STEPS + 1 }, (_, step) =>
    fittedAt(courses, last.atMs * (step / STEPS) ** 1.5),
  );
  if (last.ml >= target * totalMl) return { fitted, ahead: [] };
  const from = Math.min(fitted.at(-1)?.ml ?? 0, target * totalMl);
  return { fitted, ahead: aheadOf(drawn, from) };
}
