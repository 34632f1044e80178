import { usualDrip } from "../../method/drip/usual-drip.ts";
import type { Procedure, Step } from "../../method/procedure.ts";
import { DAY, MINUTE } from "../../quantity/time-units-table.ts";
import type { Run } from "../../run/run.ts";
import type { Plan } from "../../spec/plan.ts";
import type { Planned } from "../planned.ts";
import type { Job, JobStep, Limits, Use } from "./job.ts";
import { type JobFacts, jobOf } from "./job-of.ts";
import { jobOfRun } from "./job-of-run.ts";
import { type Announced, type Replan, replanDay } from "./replan-day.ts";

/** @source judgement: within a day somebody comes to what stands on a filter stand */
const STANDS_FOR = DAY;

/** Everything that wants hands, stands or room, planned together; by id of run or planned batch. */
export interface PrepDay extends Replan {
  readonly limits: Limits;
  /** By when each job was asked to be ready, epoch ms; what was promised to nobody is not there. */
  readonly promised: Readonly<Record<string, number>>;
}

/** What stands in the vessel while it waits, litres: milk and punch of a wash, else the batch. */
const litresOf = (plan: Plan): number => (plan.yield?.poured ?? plan.finalMl) / 1000;

/** The room that a wait in the cold takes, beside what its step uses of other things. */
function coldUses(step: Step, litres: number): readonly Use[] | undefined {
  const { stands, uses = [] } = step;
  if (stands === undefined || stands === "counter") return undefined;
  return [
    ...uses.filter(({ resource }) => resource !== stands),
    { resource: stands, amount: litres },
  ];
}

/**
 * What a batch adds to its procedure: an infusion has to be ready even if it takes its whole time,
 * a drip takes as long as its volume and filters say, times what the house has learnt of its own.
 *
 * @source cold room: the whole volume of what is poured, in litres, for as long as a step says that
 *   its vessel stands in the fridge or freezer; `usualDrip` for the drip
 */
export function batchFacts(
  batch: { readonly id: string; readonly plan: Plan; readonly procedure: Procedure },
  readyBy: number,
): JobFacts {
  const { id, plan, procedure } = batch;
  const expected = procedure.steps.flatMap((step): readonly [string, number][] => {
    if (step.longestFor !== undefined) return [[step.id, step.longestFor]];
    if (step.work !== "drip" || plan.yield === undefined) return [];
    const usual = usualDrip(plan.yield.expected, plan.spec.wash?.filters ?? 1);
    return [[step.id, Math.max(MINUTE, usual * (plan.yield.drip?.times ?? 1))]];
  });
  const uses = procedure.steps.flatMap((step): readonly [string, readonly Use[]][] => {
    const cold = coldUses(step, litresOf(plan));
    return cold === undefined ? [] : [[step.id, cold]];
  });
  return {
    id,
    name: plan.spec.name,
    readyBy,
    expected: Object.fromEntries(expected),
    uses: Object.fromEntries(uses),
  };
}

/**
 * What a run that was promised to nobody keeps others from: the wait it is in and what it stands on
 * or in, until it gives that free. When the rest will be done nobody has said.
 */
function occupied(run: Run, now: number): Job | undefined {
  const job = jobOfRun(run, batchFacts(run, now), now);
  if (job === undefined) return undefined;
  const { steps, holds = [] } = job;
  const place = (id: string): number => steps.findIndex((step) => step.id === id);
  const goesOn = ({ fixedStart, forMs }: JobStep): boolean =>
    fixedStart !== undefined && fixedStart + forMs > now;
  const taken = holds.filter(({ fromStep }) => steps[place(fromStep)]?.fixedStart !== undefined);
  const ends = taken.map(({ toStep }) => place(toStep));
  const kept = steps.slice(0, Math.max(steps.findLastIndex(goesOn), ...ends) + 1);
  const left = kept.filter((step) => step.fixedStart === undefined || goesOn(step));
  if (left.length === 0) return undefined;
  const readyBy = now + STANDS_FOR + left.reduce((sum, { forMs }) => sum + forMs, 0);
  return { ...job, steps: kept, holds: taken, readyBy };
}

/** Planned batches that have not been begun: a run that was has the same id. */
export function notBegun(
  planned: readonly Planned[],
  batches: readonly { readonly runId: string }[],
): readonly Planned[] {
  const begun = new Set(batches.map(({ runId }) => runId));
  return planned.filter(({ id }) => !begun.has(id));
}

/** By when runs and batches were asked to be ready. */
function promisedOf(open: readonly Run[], planned: readonly Planned[]) {
  const runs = open.flatMap(({ id, readyBy }) => (readyBy === undefined ? [] : [[id, readyBy]]));
  return Object.fromEntries([...runs, ...planned.map(({ id, readyBy }) => [id, readyBy])]);
}

/**
 * All that is being made and all that is planned, as one plan backwards from each ready-by.
 *
 * @param open - runs that have not ended; one without a ready-by only keeps what it is using
 * @param planned - batches that have not begun; a part is brought forward to what it is made for
 * @param limits - what there is, and when it is not to be had
 * @param now - epoch ms
 * @param before - the plan as it was last seen, if any: its work by hand stays where it still fits
 * @source as `replanDay`, `chainedPlan` and `jobOfRun`
 */
export function prepDay(
  open: readonly Run[],
  planned: readonly Planned[],
  limits: Limits,
  now: number,
  before?: Announced,
): PrepDay {
  const going = open.flatMap((run) => {
    const { readyBy } = run;
    const job =
      readyBy === undefined ? occupied(run, now) : jobOfRun(run, batchFacts(run, readyBy), now);
    return job ?? [];
  });
  const coming = planned.map((one) => jobOf(one.procedure, batchFacts(one, one.readyBy)).job);
  const madeFor = new Map(
    planned.flatMap(({ id, madeFor: whole }) =>
      whole === undefined ? [] : [[id, whole] as const],
    ),
  );
  const jobs = [...going, ...coming];
  const found = replanDay({ jobs, madeFor, limits, now, ...(before && { before }) });
  return { ...found, limits, promised: promisedOf(open, planned) };
}
