import { type Chain, type Demand, endIn, type Network, startIn, type Task } from "./network.ts";
import { copyOf, firstOver, latestFit, putToUse, type Timeline, unused } from "./timeline.ts";

/** What is in use of each resource, by resource. */
export type InUse = readonly Timeline[];

/** Steps looked at before a job counts as one that does not fit. */
const PATIENCE = 20_000;

/** The same, to be changed by itself. */
export const copyOfUsage = (usage: InUse): InUse => usage.map(copyOf);

/** What has begun or is taken, before anything is placed. */
export function usageOfFacts({ capacities, claims }: Network): InUse {
  return capacities.map((_, of) => {
    const timeline = unused();
    for (const { first, knownUntil, amount } of claims[of] ?? []) {
      putToUse(timeline, first.low, knownUntil, amount);
    }
    return timeline;
  });
}

/** What a job claims where it has been placed; what is a fact is in use already. */
function useFor(usage: InUse, { claims }: Chain, starts: Float64Array): void {
  for (const { of, first, knownUntil, last, amount } of claims) {
    const from = Math.max(startIn(starts, first), knownUntil);
    const timeline = usage[of];
    if (timeline !== undefined) putToUse(timeline, from, endIn(starts, last), amount);
  }
}

interface Placing {
  readonly network: Network;
  readonly usage: InUse;
  readonly starts: Float64Array;
}

const mostBeside = ({ network }: Placing, { of, amount }: Demand): number =>
  (network.capacities[of] ?? Number.POSITIVE_INFINITY) - amount;

/** The latest start of a task by itself, not after the one it has. */
function fitTask(placing: Placing, task: Task): number {
  let start = startIn(placing.starts, task);
  if (task.pinned) return start;
  let fitted = Number.POSITIVE_INFINITY;
  while (start < fitted && start >= task.low) {
    fitted = start;
    for (const demand of task.during) {
      const timeline = placing.usage[demand.of];
      if (timeline === undefined) continue;
      start = latestFit(timeline, start, task.forMs, mostBeside(placing, demand));
    }
  }
  return start;
}

/** What is held over the idle time after a task must be free too, or the next step comes earlier. */
function latestNext(placing: Placing, task: Task, next: Task): number {
  let latest = startIn(placing.starts, next);
  for (const demand of task.after) {
    const timeline = placing.usage[demand.of];
    if (timeline === undefined) continue;
    const end = endIn(placing.starts, task);
    latest = firstOver(timeline, end, latest, mostBeside(placing, demand)) ?? latest;
  }
  return latest;
}

function lower({ starts }: Placing, task: Task, to: number): boolean {
  if (to >= startIn(starts, task)) return false;
  starts[task.index] = to;
  return true;
}

/** Places one task; whether the next one must be placed again, earlier. */
function placeTask(placing: Placing, task: Task, next: Task | undefined): boolean {
  lower(placing, task, fitTask(placing, task));
  let again = false;
  for (const { to, plus } of task.bounds) {
    const lowered = lower(placing, to, startIn(placing.starts, task) + plus);
    if (to === next) again = lowered;
  }
  if (next === undefined || next.pinned || again) return again;
  return lower(placing, next, latestNext(placing, task, next));
}

/**
 * Places one job as late as it can be beside what is in use, all its steps at once. What makes one
 * step late never makes another early, so there is one latest placing of all of them: from the last
 * step to the first, and back whenever a step takes the next one with it.
 *
 * @param usage - what it claims is added
 * @param latest - upper bounds by task, epoch ms
 * @returns the bounds with its own starts; nothing, and nothing added, where it does not fit
 */
export function insertJob(
  network: Network,
  chain: Chain,
  usage: InUse,
  latest: Float64Array,
): Float64Array | undefined {
  const { tasks } = chain;
  const placing: Placing = { network, usage, starts: latest.slice() };
  let left = PATIENCE;
  for (let i = tasks.length - 1; i >= 0; left -= 1) {
    const task = tasks[i];
    if (task === undefined || left === 0) return undefined;
    const again = placeTask(placing, task, tasks[i + 1]);
    if (startIn(placing.starts, task) < task.low) return undefined;
    i += again ? 1 : -1;
  }
  useFor(usage, chain, placing.starts);
  return placing.starts;
}
