import type { DayPlan, PlacedStep, QuietSpan } from "./day-plan.ts";
import type { Day } from "./give-way.ts";
import { type Job, type JobStep, type Limits, PERSON } from "./job.ts";
import { networkOf } from "./network.ts";
import { solveNetwork } from "./solve.ts";
import { byStep, stepKey } from "./step-key.ts";
import { wideEnough } from "./wide-enough.ts";

/** Work that could be done sooner than it has to be. Times in epoch ms. */
export interface SpareWork {
  readonly job: string;
  readonly step: string;
  readonly forMs: number;
  /** When it would have to be begun at the latest. */
  readonly latestStart: number;
}

/** A stretch in which nobody is needed, and what fits into it. */
export interface Quiet {
  readonly span: QuietSpan;
  /** The most pressing first. */
  readonly work: readonly SpareWork[];
}

type Placed = ReadonlyMap<string, PlacedStep>;

/** The first moment from one on at which somebody is in. */
function somebodyIn({ capacity, taken = [] }: Limits, from: number): number {
  const most = capacity[PERSON] ?? Number.POSITIVE_INFINITY;
  const away = taken.filter(({ resource, amount }) => resource === PERSON && amount >= most);
  const ends = away.toSorted((a, b) => a.from - b.from);
  return ends.reduce((at, one) => (one.from <= at && at < one.to ? one.to : at), from);
}

/** The next thing to do by hand for a job, where what comes before it is over by then. */
function nextByHand(job: Job, placed: Placed, from: number): SpareWork | undefined {
  const at = job.steps.findIndex((step) => step.fixedStart === undefined);
  const step = job.steps[at];
  if (step === undefined || step.kind !== "hands-on") return undefined;
  const of = (one: JobStep | undefined) => one && placed.get(stepKey(job.id, one.id));
  const [before, here] = [of(job.steps[at - 1]), of(step)];
  if (here === undefined || (before !== undefined && before.endAt > from)) return undefined;
  const { id, forMs } = step;
  return { job: job.id, step: id, forMs, latestStart: here.startAt };
}

/** Whether a day still plans with one piece of work at a moment and that of all others as placed. */
function fitsAt({ jobs, limits, now }: Day, placed: Placed, work: SpareWork, at: number): boolean {
  const byHand = new Set(
    jobs.flatMap(({ id, steps }) =>
      steps.filter(({ kind }) => kind === "hands-on").map((step) => stepKey(id, step.id)),
    ),
  );
  const network = networkOf(jobs, limits, now, (job, step) => {
    if (job === work.job) return step === work.step ? at : undefined;
    const key = stepKey(job, step);
    return byHand.has(key) ? placed.get(key)?.startAt : undefined;
  });
  return solveNetwork(network, "any").starts !== undefined;
}

/**
 * What could be done in the next quiet stretch, so that it is out of the way.
 *
 * @param plan - as made from these jobs and limits, perhaps one that makes the least of a bad day
 * @param now - epoch ms
 * @param forMs - how long somebody has at most; the whole stretch unless told
 * @returns the stretch from when somebody is in, if that is within it, and the work that fits whole
 *   into it and after which all else still does
 * @source each piece of work is tried: begun at the start of the stretch, with the work by hand of
 *   all other batches where it is, the day must still plan
 */
export function workForQuiet(
  plan: DayPlan,
  jobs: readonly Job[],
  limits: Limits,
  now: number,
  forMs = Number.POSITIVE_INFINITY,
): Quiet {
  const { from: first, to = Number.POSITIVE_INFINITY } = plan.nextQuiet;
  const there = somebodyIn(limits, first);
  const from = there < to ? there : first;
  const end = Math.min(to, from + forMs);
  const day = wideEnough({ jobs, limits, now }, plan.placed);
  const placed = byStep(plan.placed);
  const work = jobs
    .flatMap((job) => nextByHand(job, placed, from) ?? [])
    .filter((one) => {
      const fits = one.latestStart > from && from + one.forMs <= end;
      return fits && fitsAt(day, placed, one, from);
    })
    .toSorted((a, b) => a.latestStart - b.latestStart);
  return { span: end < Number.POSITIVE_INFINITY ? { from, to: end } : { from }, work };
}
