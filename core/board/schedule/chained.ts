import type { DayPlan } from "./day-plan.ts";
import type { Job } from "./job.ts";
import type { NoPlan } from "./plan-day.ts";

/** Jobs brought forward to when they are needed, and the plan of them. */
export interface Chained {
  readonly jobs: readonly Job[];
  readonly plan: DayPlan | NoPlan;
}

const hasBegun = ({ steps }: Job): boolean => steps[0]?.fixedStart !== undefined;

/** The latest moment at which a job could begin if nothing else were going on. */
const latestAlone = ({ readyBy, steps }: Job): number =>
  readyBy - steps.reduce((sum, { forMs }) => sum + forMs, 0);

/**
 * The same jobs with those that are made for another ready by a moment of that one.
 *
 * @returns the very same array where nothing has to be brought forward
 */
function brought(
  jobs: readonly Job[],
  madeFor: ReadonlyMap<string, string>,
  startOf: (job: Job) => number | undefined,
): readonly Job[] {
  const byId = new Map(jobs.map((job) => [job.id, job]));
  let moved = false;
  // A part of a part: the later one has to be brought forward before the one it needs.
  for (let turn = 0; turn < jobs.length; turn += 1) {
    for (const [id, target] of madeFor) {
      const [job, after] = [byId.get(id), byId.get(target)];
      if (job === undefined || after === undefined || hasBegun(after)) continue;
      const needed = Math.max(0, startOf(after) ?? Number.POSITIVE_INFINITY);
      if (!(needed < job.readyBy)) continue;
      byId.set(id, { ...job, readyBy: needed });
      moved = true;
    }
  }
  return moved ? [...byId.values()] : jobs;
}

/**
 * A plan in which what is made for another batch is ready when that batch begins.
 *
 * @param jobs - each with the ready-by it was planned for
 * @param madeFor - by id of a job, the id of the one it is made for; one that has begun, or is not
 *   there, asks for nothing more
 * @param schedule - plans jobs, as `scheduleJobs`
 * @returns the jobs with the ready-by that was found for them, and their plan
 * @source each round takes the starts of the plan before, and no ready-by ever moves later, so that
 *   it comes to an end; the first round takes the latest start that a batch could have alone
 * @limits a part may be ready somewhat earlier than need be where bringing it forward gave the batch
 *   it is for a later start
 */
export function chainedPlan(
  jobs: readonly Job[],
  madeFor: ReadonlyMap<string, string>,
  schedule: (jobs: readonly Job[]) => DayPlan | NoPlan,
): Chained {
  let chained = brought(jobs, madeFor, latestAlone);
  let plan = schedule(chained);
  for (let round = 0; round < madeFor.size + 2; round += 1) {
    const day = plan.ok ? plan : plan.least;
    const starts = new Map(day.latestStart.map(({ job, startAt }) => [job, startAt]));
    const next = brought(chained, madeFor, ({ id }) => starts.get(id));
    if (next === chained) break;
    chained = next;
    plan = schedule(chained);
  }
  return { jobs: chained, plan };
}
