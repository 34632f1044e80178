import { MINUTE } from "../quantity/time-units-table.ts";
import { alarmsOf } from "../run/alarm.ts";
import { openVisit, type Run } from "../run/run.ts";

/** Sooner than this before an alarm nobody should be sent away from the screen, ms. */
export const BEFORE_ALARM = 30 * MINUTE;

/** Whether a run wants nobody for the next half hour: it waits, or it was set aside. */
function rests(run: Run, now: number): boolean {
  if (run.pausedAt !== undefined || openVisit(run) === undefined) return true;
  const [alarm] = alarmsOf(run);
  return alarm !== undefined && alarm.dueAt - now > BEFORE_ALARM;
}

/**
 * Whether the app may start anew: nobody has work in hand, and no alarm falls due within half an
 * hour. A wait goes on meanwhile, for its end is in the log.
 *
 * @param open - the runs being made
 * @param now - epoch ms
 */
export const atRest = (open: readonly Run[], now: number): boolean =>
  open.every((run) => rests(run, now));
