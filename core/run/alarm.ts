import { byText } from "./order.ts";
import { endingOf, openVisit, type Run, stepOfVisit, type Visit } from "./run.ts";

/** What an alarm asks for: to act now, or to look and say what is seen. */
export type AlarmKind = "do" | "look";

/** A moment at which somebody is wanted. Derived from the log, never stored. */
export interface Alarm {
  readonly runId: string;
  readonly visit: string;
  readonly kind: AlarmKind;
  /** Epoch ms. */
  readonly dueAt: number;
}

/**
 * The next moment a wait asks for somebody: when it is due, then `askEvery` after the last time
 * somebody answered, until the step is finished.
 */
function nextAsk({ dueAt, heardAt }: Visit, askEvery: number | undefined): number | undefined {
  if (dueAt === undefined || heardAt === undefined || heardAt < dueAt) return dueAt;
  return askEvery === undefined ? undefined : heardAt + askEvery;
}

/**
 * The alarms of a run: none once it has ended or where nothing is waited for.
 *
 * @returns the next alarm of the step being worked on, due or not
 */
export function alarmsOf(run: Run): readonly Alarm[] {
  const visit = openVisit(run);
  if (visit === undefined || endingOf(run) !== undefined) return [];
  const step = stepOfVisit(run, visit);
  const dueAt = nextAsk(visit, step.askEvery);
  if (dueAt === undefined) return [];
  const kind = step.kind === "timed-wait" ? "do" : "look";
  return [{ runId: run.id, visit: visit.key, kind, dueAt }];
}

/**
 * The alarms that should be ringing.
 *
 * @param runs - any; those that have ended are silent
 * @param now - epoch ms
 * @returns those due at or before `now`, the longest overdue first
 */
export function ringingAlarms(runs: readonly Run[], now: number): readonly Alarm[] {
  return runs
    .flatMap(alarmsOf)
    .filter((alarm) => alarm.dueAt <= now)
    .sort((a, b) => a.dueAt - b.dueAt || byText(a.runId, b.runId));
}
