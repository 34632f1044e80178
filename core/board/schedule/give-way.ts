import { MINUTE } from "../../quantity/time-units-table.ts";
import type { Job, Limits } from "./job.ts";
import { type Network, networkOf } from "./network.ts";
import { solveNetwork } from "./solve.ts";

/** What is to be planned, and when. */
export interface Day {
  readonly jobs: readonly Job[];
  readonly limits: Limits;
  /** Epoch ms. */
  readonly now: number;
}

/** By how much the bounds of a day give way. */
export interface Give {
  /** Whole minutes after ready-by, by job. */
  readonly late: ReadonlyMap<string, number>;
  /** Whole minutes that each step may stand longer before it, by job. */
  readonly standing: ReadonlyMap<string, number>;
  /** More of a resource, by its name. */
  readonly extra: ReadonlyMap<string, number>;
}

/** Every bound as it was asked for. */
export const NO_GIVE: Give = { late: new Map(), standing: new Map(), extra: new Map() };

function laterJob(job: Job, late: number, standing: number): Job {
  const steps = job.steps.map((step) =>
    step.mayWaitBefore === undefined
      ? step
      : { ...step, mayWaitBefore: step.mayWaitBefore + standing * MINUTE },
  );
  return { ...job, readyBy: job.readyBy + late * MINUTE, steps };
}

/**
 * The day with its bounds given way.
 *
 * @param give - from 0 each
 */
export function giveWay({ jobs, limits, now }: Day, { late, standing, extra }: Give): Day {
  const capacity = Object.entries(limits.capacity).map(
    ([name, most]) => [name, most + (extra.get(name) ?? 0)] as const,
  );
  return {
    jobs: jobs.map((job) => laterJob(job, late.get(job.id) ?? 0, standing.get(job.id) ?? 0)),
    limits: { ...limits, capacity: Object.fromEntries(capacity) },
    now,
  };
}

/** A day that fits once its bounds have given way. */
export interface Fit {
  readonly network: Network;
  readonly starts: Float64Array;
}

/**
 * Any plan of a day whose bounds give way.
 *
 * @returns nothing where none is found
 */
export function fitWith(day: Day, give: Give): Fit | undefined {
  const { jobs, limits, now } = giveWay(day, give);
  const network = networkOf(jobs, limits, now);
  const { starts } = solveNetwork(network, "any");
  return starts === undefined ? undefined : { network, starts };
}
