import type { PlacedStep } from "../../../../core/board/schedule/day-plan.ts";
import type { Job, JobStep, Limits } from "../../../../core/board/schedule/job.ts";
import { fitsTogether, SLOT } from "./brute-force.ts";

/** How a step that goes on really goes, ms longer than planned; and how long work stays undone. */
export interface Reality {
  readonly slowBy?: (job: string, step: string) => number;
  readonly lag?: (job: string) => number;
}

const placeOf = (placed: readonly PlacedStep[], job: string, step: string): PlacedStep => {
  const found = placed.find((one) => one.job === job && one.step === step);
  if (found === undefined) throw new RangeError(`${job} ${step} is not in the plan`);
  return found;
};

/** Jobs as they stand at a moment when a plan has been carried out, but for what went otherwise. */
export function carriedOut(
  jobs: readonly Job[],
  placed: readonly PlacedStep[],
  now: number,
  { slowBy = () => 0, lag = () => 0 }: Reality = {},
): readonly Job[] {
  return jobs.map((job) => {
    const steps = job.steps.map((step): JobStep => {
      if (step.fixedStart !== undefined) return step;
      const { startAt, endAt } = placeOf(placed, job.id, step.id);
      if (startAt + lag(job.id) > now) return step;
      const more = endAt > now ? slowBy(job.id, step.id) : 0;
      return { ...step, fixedStart: startAt, forMs: Math.max(step.forMs + more, 0) };
    });
    return { ...job, steps };
  });
}

/** Whether every step could still begin when a plan says. */
export function stillFits(
  jobs: readonly Job[],
  placed: readonly PlacedStep[],
  within: Limits,
  now: number,
): boolean {
  const starts = jobs.map((job) =>
    job.steps.map(
      ({ id, fixedStart }) => (fixedStart ?? placeOf(placed, job.id, id).startAt) / SLOT,
    ),
  );
  const follows = jobs.every((job, i) =>
    job.steps.every((step, at) => {
      if (step.fixedStart !== undefined) return true;
      const before = job.steps[at - 1];
      const start = (starts[i]?.[at] ?? 0) * SLOT;
      const free = before === undefined ? now : (starts[i]?.[at - 1] ?? 0) * SLOT + before.forMs;
      return start >= Math.max(now, free) && start - free <= (step.mayWaitBefore ?? 1e17);
    }),
  );
  const inTime = jobs.every(({ readyBy, steps }, i) => {
    const end = (starts[i]?.at(-1) ?? 0) * SLOT + (steps.at(-1)?.forMs ?? 0);
    return end <= readyBy || (end <= now && steps.at(-1)?.fixedStart !== undefined);
  });
  return follows && inTime && fitsTogether(jobs, starts, within, now);
}
