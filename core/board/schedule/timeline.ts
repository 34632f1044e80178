import { SLACK } from "./job.ts";

/** How much of a resource is in use, as steps over time. Changed in place: it is the inmost loop. */
export interface Timeline {
  /** Epoch ms, ascending; from each on, the level beside it is in use. Nothing is before the first. */
  readonly times: number[];
  readonly levels: number[];
}

/** Nothing in use, ever. */
export const unused = (): Timeline => ({ times: [], levels: [] });

/** The same, to be changed by itself. */
export const copyOf = ({ times, levels }: Timeline): Timeline => ({
  times: times.slice(),
  levels: levels.slice(),
});

/** The last step that begins at or before a moment; -1 before the first. */
function placeOf(times: readonly number[], moment: number): number {
  let [low, high] = [-1, times.length];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((times[middle] ?? Number.POSITIVE_INFINITY) <= moment) low = middle;
    else high = middle;
  }
  return low;
}

/** Makes a step begin at a moment, and tells its place. */
function cutAt({ times, levels }: Timeline, moment: number): number {
  const place = placeOf(times, moment);
  if (times[place] === moment) return place;
  times.splice(place + 1, 0, moment);
  levels.splice(place + 1, 0, levels[place] ?? 0);
  return place + 1;
}

/** Puts an amount to use from one moment to another. */
export function putToUse(timeline: Timeline, from: number, to: number, amount: number): void {
  if (to <= from) return;
  const first = cutAt(timeline, from);
  const end = cutAt(timeline, to);
  const { levels } = timeline;
  for (let place = first; place < end; place += 1) levels[place] = (levels[place] ?? 0) + amount;
}

/**
 * The latest start, not after `latest`, from which a level is not exceeded for a while.
 *
 * @param most - what may be in use beside it
 * @returns epoch ms, or minus infinity where there is never so little in use
 */
export function latestFit(
  { times, levels }: Timeline,
  latest: number,
  forMs: number,
  most: number,
): number {
  if (most + SLACK < 0) return Number.NEGATIVE_INFINITY;
  let start = latest;
  let place = placeOf(times, start + forMs);
  for (let end = start + forMs; place >= 0 && end > start; place -= 1) {
    end = times[place] ?? Number.NEGATIVE_INFINITY;
    if ((levels[place] ?? 0) > most + SLACK) start = end - forMs;
  }
  return start;
}

/**
 * Where a level is first exceeded between two moments.
 *
 * @returns when that begins, which may be before `from`; nothing where it is not
 */
export function firstOver(
  { times, levels }: Timeline,
  from: number,
  to: number,
  most: number,
): number | undefined {
  if (to <= from) return undefined;
  if (most + SLACK < 0) return from;
  for (let place = Math.max(0, placeOf(times, from)); place < times.length; place += 1) {
    const start = times[place] ?? to;
    if (start >= to) return undefined;
    const end = times[place + 1] ?? Number.POSITIVE_INFINITY;
    if (end > from && (levels[place] ?? 0) > most + SLACK) return start;
  }
  return undefined;
}
