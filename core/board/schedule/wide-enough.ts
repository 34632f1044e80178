import { peakOn } from "./clash.ts";
import type { PlacedStep } from "./day-plan.ts";
import type { Day } from "./give-way.ts";
import type { Job } from "./job.ts";
import { type Network, networkOf } from "./network.ts";
import { byStep, stepKey } from "./step-key.ts";

/** The starts of a plan by task; a step that it does not have counts from its earliest. */
function startsOf({ tasks, chains }: Network, placed: readonly PlacedStep[]): Float64Array {
  const known = byStep(placed);
  return Float64Array.from(tasks, ({ chain, step, low }) => {
    const id = chains[chain]?.job?.id;
    return (id === undefined ? undefined : known.get(stepKey(id, step)))?.startAt ?? low;
  });
}

/** The job with what the plan makes late or lets stand allowed. */
function allowed(job: Job, placed: ReadonlyMap<string, PlacedStep>): Job {
  const at = job.steps.map(({ id }) => placed.get(stepKey(job.id, id)));
  const steps = job.steps.map((step, i) => {
    const [before, here] = [at[i - 1], at[i]];
    if (step.mayWaitBefore === undefined || before === undefined || here === undefined) return step;
    const idle = here.startAt - before.endAt;
    return { ...step, mayWaitBefore: Math.max(step.mayWaitBefore, idle) };
  });
  return { ...job, steps, readyBy: Math.max(job.readyBy, at.at(-1)?.endAt ?? 0) };
}

/**
 * A day with its bounds just wide enough for a plan: as it is where the plan keeps to them.
 *
 * @param placed - a plan of the day, perhaps one that makes the least of it
 */
export function wideEnough(day: Day, placed: readonly PlacedStep[]): Day {
  const { jobs, limits, now } = day;
  const network = networkOf(jobs, limits, now);
  const starts = startsOf(network, placed);
  const capacity = network.resources.map((name, of) => {
    const used = peakOn(network, of, starts).amount;
    return [name, Math.max(limits.capacity[name] ?? 0, used)] as const;
  });
  const known = byStep(placed);
  return {
    jobs: jobs.map((job) => allowed(job, known)),
    limits: { ...limits, capacity: Object.fromEntries(capacity) },
    now,
  };
}
