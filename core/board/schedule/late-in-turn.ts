import type { Day } from "./give-way.ts";
import { copyOfUsage, type InUse, usageOfFacts } from "./insert-job.ts";
import { insertLate } from "./insert-late.ts";
import { type Chain, type Network, networkOf } from "./network.ts";

/** Jobs placed one after another. */
export interface Turned {
  /** Whole minutes by job. */
  readonly late: ReadonlyMap<string, number>;
  /** By task, epoch ms. */
  readonly starts: Float64Array;
}

const total = ({ late }: Turned): number => [...late.values()].reduce((sum, one) => sum + one, 0);

/** Runs first, what they hold cannot be moved; then by different notions of what must not be late. */
function turnsOf({ chains }: Network): readonly (readonly Chain[])[] {
  const begun = ({ tasks }: Chain): number => (tasks[0]?.pinned === true ? 0 : 1);
  const readyBy = ({ job }: Chain): number => job?.readyBy ?? 0;
  const busy = ({ tasks }: Chain): number => tasks.reduce((sum, { forMs }) => sum + forMs, 0);
  const jobs = chains.filter(({ job }) => job !== undefined);
  const by = (first: (chain: Chain) => number) =>
    jobs.toSorted((a, b) => begun(a) - begun(b) || first(a) - first(b));
  return [by(readyBy), by((chain) => -busy(chain)), by((chain) => readyBy(chain) - busy(chain))];
}

function lateIn(
  network: Network,
  facts: InUse,
  turns: readonly Chain[],
  most: number,
): Turned | undefined {
  const usage = copyOfUsage(facts);
  let starts: Float64Array = Float64Array.from(network.tasks, ({ low }) => low);
  const late = new Map<string, number>();
  for (const chain of turns) {
    const found = insertLate(network, chain, usage, starts, most);
    if (found === undefined) return undefined;
    starts = found.starts;
    late.set(chain.job?.id ?? "", found.minutes);
  }
  return { late, starts };
}

/**
 * How late each job is when they are placed one after another, each as little late as it can be then.
 *
 * @param most - minutes that a job may be late by
 * @returns of several turns the least late in all; nothing where a job finds no room
 * @source judgement which turns; no proof that less would not do
 */
export function lateInTurn(day: Day, most: number): Turned | undefined {
  const network = networkOf(day.jobs, day.limits, day.now);
  const facts = usageOfFacts(network);
  return turnsOf(network)
    .flatMap((turns) => lateIn(network, facts, turns, most) ?? [])
    .toSorted((a, b) => total(a) - total(b))[0];
}
