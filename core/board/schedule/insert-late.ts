import { MINUTE } from "../../quantity/time-units-table.ts";
import { copyOfUsage, type InUse, insertJob } from "./insert-job.ts";
import { narrow } from "./narrow.ts";
import type { Chain, Network } from "./network.ts";
import { settle } from "./settle.ts";

/** A job placed, and whole minutes that it is late by. */
export interface PlacedLate {
  readonly starts: Float64Array;
  readonly minutes: number;
}

/**
 * The latest starts of one job when nothing is ever short and it may be late.
 *
 * @param starts - by task, epoch ms; those of other jobs are kept
 * @returns nothing where its time does not reach
 */
export function latestOf(
  { tasks }: Network,
  chain: Chain,
  starts: Float64Array,
  minutes = 0,
): Float64Array | undefined {
  const latest = starts.slice();
  const last = chain.tasks.at(-1);
  for (const task of chain.tasks) latest[task.index] = task.top;
  if (last !== undefined && chain.job !== undefined && minutes > 0) {
    const by = chain.job.readyBy + minutes * MINUTE - last.forMs;
    latest[last.index] = last.pinned ? Math.min(last.low, by) : by;
  }
  return settle(tasks, latest, chain.tasks) ? latest : undefined;
}

/**
 * Places one job beside what is in use, late by as few minutes as it takes.
 *
 * @param usage - what it claims is added
 * @param starts - by task, epoch ms; those of other jobs are kept
 * @param most - minutes that it may be late by, from 0
 * @returns nothing, and nothing added, where even that is not enough
 * @source more time never makes a fit worse, so that halving finds the least
 */
export function insertLate(
  network: Network,
  chain: Chain,
  usage: InUse,
  starts: Float64Array,
  most: number,
): PlacedLate | undefined {
  const placed = (minutes: number, into: InUse): Float64Array | undefined => {
    const latest = latestOf(network, chain, starts, minutes);
    return latest && insertJob(network, chain, into, latest);
  };
  const probe = (late: number): number | undefined => {
    const minutes = Math.floor(late);
    return placed(minutes, copyOfUsage(usage)) && minutes;
  };
  const minutes = probe(0) ?? narrow(most, () => 1, probe);
  if (minutes === undefined) return undefined;
  const found = placed(minutes, usage);
  return found && { starts: found, minutes };
}
