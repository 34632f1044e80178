import { isWait, type Step } from "../../method/procedure.ts";
import { MINUTE } from "../../quantity/time-units-table.ts";
import { dripOutlook } from "../../run/drip-outlook.ts";
import { endingOf, openVisit, type Run, type Visit } from "../../run/run.ts";
import type { Job, JobStep } from "./job.ts";
import { type JobFacts, jobStep, standHeld, timeOf } from "./job-of.ts";
import { type Passage, pathOfRun } from "./path-of-run.ts";

/** When the open wait should be over, where its run tells: never in the past. */
function endOfOpen(run: Run, visit: Visit, step: Step, now: number, usual: number): number {
  const { kind, work, longestFor } = step;
  // A clock put back may have it begin after now.
  const soon = Math.max(now, visit.startedAt) + MINUTE;
  if (work === "drip") {
    const outlook = dripOutlook(run);
    if (outlook?.type === "forecast") {
      return Math.max(soon, visit.startedAt + outlook.throughAt.p50);
    }
  }
  // It has to be ready even if it takes its whole time.
  if (longestFor !== undefined) return Math.max(soon, visit.startedAt + longestFor);
  const timed = kind === "timed-wait" ? visit.dueAt : undefined;
  return Math.max(soon, timed ?? visit.startedAt + usual);
}

/** How long a passage took or should take, ms. */
function lengthOf(run: Run, open: Visit, one: Passage, facts: JobFacts, now: number): number {
  const { step, startedAt, finishedAt } = one;
  const usual = timeOf(step, facts);
  if (startedAt === undefined) return usual;
  if (finishedAt !== undefined) return finishedAt - startedAt;
  return isWait(step) ? endOfOpen(run, open, step, now, usual) - startedAt : usual;
}

/** What has stood longer than it may is to be done now; what is paused stands as somebody chose. */
function stillToDo(bare: JobStep, run: Run, before: Passage | undefined, now: number): JobStep {
  const { mayWaitBefore, ...free } = bare;
  if (mayWaitBefore === undefined || run.pausedAt !== undefined) return free;
  return { ...bare, mayWaitBefore: Math.max(mayWaitBefore, now - (before?.finishedAt ?? now)) };
}

/**
 * A run as the schedule sees it: what is over with its true start and length, a wait that goes on
 * until it should be over, then what is to come the usual way. Work by hand that the run stands at is
 * still to be done, from now on.
 *
 * @param run - as its log tells it
 * @param facts - as for a batch that has not begun; `readyBy` as promised, or a moment so late that
 *   it is never missed
 * @param now - epoch ms
 * @returns nothing where the run stands at no step, or has ended
 * @source the open step: the drip as forecast (half of such drips are over by then), a timed wait to
 *   its due time, a tasted one to its hard stop, all else its usual length; what is overdue, a minute
 *   more
 */
export function jobOfRun(run: Run, facts: JobFacts, now: number): Job | undefined {
  const open = openVisit(run);
  if (open === undefined || endingOf(run) !== undefined) return undefined;
  const path = pathOfRun(run);
  const lengths = path.map((one) => lengthOf(run, open, one, facts, now));
  const steps = path.map((one, at): JobStep => {
    const { id, step, startedAt, finishedAt } = one;
    const before = path[at - 1];
    const bare = jobStep(step, before?.step, lengths[at - 1] ?? 0, facts);
    const timed = { ...bare, id, forMs: lengths[at] ?? bare.forMs };
    if (startedAt === undefined) return timed;
    if (finishedAt === undefined && !isWait(step)) return stillToDo(timed, run, before, now);
    return { ...timed, fixedStart: startedAt };
  });
  const { id, name, readyBy } = facts;
  const held = standHeld(path.map((one) => ({ id: one.id, work: one.step.work })));
  return { id, name, readyBy, steps, holds: facts.holds ?? held };
}
