import { MINUTE } from "../../core/quantity/time-units-table.ts";

/** A stretch in which the page did not run, so that nothing here could ring. Epoch ms, ms. */
export interface SleepGap {
  readonly fromMs: number;
  readonly forMs: number;
}

/** One look at whether the page runs. */
export interface SleepLook {
  /** Epoch ms. */
  readonly wall: number;
  /** Out of sight or frozen at any time since the look before. */
  readonly left: boolean;
  /** In sight now. */
  readonly visible: boolean;
}

/** Looks come every second; a page out of sight that is late by this much cannot be relied on, ms. */
const RUNS_YET = 10_000;
/** A shorter sleep is not worth a line in the log, ms. */
const WORTH_NOTING = MINUTE;

/**
 * Notices when the page slept, from the looks that came and those that did not. A page out of sight
 * may still run now and then: from its first long gap until it is seen again counts as one sleep.
 *
 * @param start - when the looks begin, epoch ms
 * @returns takes a look; the sleep that it ends, if it ends one
 */
export function sleepWatch(start: number): (look: SleepLook) => SleepGap | null {
  let last = start;
  let asleepFrom: number | null = null;
  return ({ wall, left, visible }) => {
    if (left && wall - last > RUNS_YET) asleepFrom ??= last;
    last = wall;
    if (!visible || asleepFrom === null) return null;
    const gap = { fromMs: asleepFrom, forMs: wall - asleepFrom };
    asleepFrom = null;
    return gap.forMs > WORTH_NOTING ? gap : null;
  };
}
