/**
 * Hybrid logical clock: close to wall time, never behind what was already seen, so events of two
 * phones sort the same everywhere.
 *
 * @source Kulkarni, Demirbas and others, "Logical Physical Clocks", OPODIS 2014 (from memory)
 */
export interface Hlc {
  readonly ms: number;
  readonly n: number;
}

/** More acts than a log has while its clock stands still: from there on the time goes on instead. */
const MOST_AT_ONCE = 1_000_000;

/** Before anything happened. */
export const HLC_ZERO: Hlc = { ms: 0, n: 0 };

/**
 * The next stamp after a local act.
 *
 * @param last - the highest stamp seen so far, own or received
 * @param wall - the phone's clock, epoch ms
 * @returns a stamp above `last`, at or above the wall clock
 * @source as `Hlc`
 * @example
 * nextHlc({ ms: 5, n: 2 }, 4).n // => 3
 */
export function nextHlc(last: Hlc, wall: number): Hlc {
  if (wall > last.ms) return { ms: wall, n: 0 };
  return last.n < MOST_AT_ONCE ? { ms: last.ms, n: last.n + 1 } : { ms: last.ms + 1, n: 0 };
}

/**
 * Sort order of stamps: time, then counter.
 *
 * @returns below 0 where `a` comes first
 * @example
 * compareHlc({ ms: 5, n: 0 }, { ms: 5, n: 2 }) // => -2
 */
export const compareHlc = (a: Hlc, b: Hlc): number => a.ms - b.ms || a.n - b.n;
