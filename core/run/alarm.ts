import type { Step } from "../method/procedure.ts";
import { endingOf, openVisit, type Run, stepOfVisit, type Visit } from "./run.ts";

/**
 * What an alarm asks for: to act now, to look and say what is seen, or only to know that it is over
 * and that it keeps.
 */
export type AlarmKind = "do" | "look" | "done";

/** A moment at which somebody is wanted. Derived from the log, never stored. */
export interface Alarm {
  readonly runId: string;
  readonly visit: string;
  readonly kind: AlarmKind;
  /** Epoch ms. */
  readonly dueAt: number;
}

/** When a wait has gone on too long, whatever it looks or tastes like. */
const hardStop = (visit: Visit, step: Step): number | undefined =>
  step.longestFor === undefined ? undefined : visit.startedAt + step.longestFor;

/** The moments a wait asks at by its procedure: when it is due, then those named, then its end. */
function namedAsks(visit: Visit, step: Step): readonly number[] {
  const { dueAt } = visit;
  if (dueAt === undefined) return [];
  const later = (step.askAt ?? []).map((after) => visit.startedAt + after);
  const stop = hardStop(visit, step);
  return [dueAt, ...later.filter((at) => at > dueAt), ...(stop === undefined ? [] : [stop])].sort(
    (a, b) => a - b,
  );
}

/** Whether a step still has moments of its own to ask at: until the last of them nothing else does. */
function hasMoments(visit: Visit, { askAt = [] }: Step, heardAt: number): boolean {
  const last = askAt.at(-1);
  return last !== undefined && heardAt < visit.startedAt + last;
}

/**
 * The next moment a wait asks for somebody: the first named one that nobody has answered yet, and
 * `askEvery` after the last answer if that comes sooner and no moment of the step's own is still to
 * come, until the step is finished.
 */
function nextAsk(visit: Visit, step: Step): number | undefined {
  const { heardAt } = visit;
  const named = namedAsks(visit, step);
  const next = named.find((at) => heardAt === undefined || at > heardAt);
  const [first] = named;
  if (heardAt === undefined || first === undefined || heardAt < first) return next;
  if (step.askEvery === undefined || hasMoments(visit, step, heardAt)) return next;
  const again = heardAt + step.askEvery;
  return next === undefined ? again : Math.min(next, again);
}

function kindOf(visit: Visit, step: Step, dueAt: number): AlarmKind {
  const stop = hardStop(visit, step);
  if (stop !== undefined && dueAt >= stop) return "do";
  if (step.kind !== "timed-wait") return "look";
  // What stands cold keeps: nothing is lost by coming a little later.
  return step.stands === "fridge" || step.stands === "freezer" ? "done" : "do";
}

/**
 * The alarms of a run: none once it has ended, while it is paused, or where nothing is waited for.
 *
 * @returns the next alarm of the step being worked on, due or not
 */
export function alarmsOf(run: Run): readonly Alarm[] {
  const visit = openVisit(run);
  if (visit === undefined || endingOf(run) !== undefined || run.pausedAt !== undefined) return [];
  const step = stepOfVisit(run, visit);
  const dueAt = nextAsk(visit, step);
  if (dueAt === undefined) return [];
  return [{ runId: run.id, visit: visit.key, kind: kindOf(visit, step, dueAt), dueAt }];
}
