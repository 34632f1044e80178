import { lastClash } from "./clash.ts";
import type { Network } from "./network.ts";
import { type Goal, latenessOf, type Searched, searchLatest } from "./search.ts";
import { latestUnlimited } from "./settle.ts";
import { type Tries, tryOrders } from "./try-orders.ts";

/** How hard it is tried. Counted, not timed, so that each phone finds the same plan. */
interface Effort {
  readonly tries: Tries;
  /** Clashes taken apart before the walk over them is given up. */
  readonly patience: number;
}

const MOST_PATIENCE = 20_000;

/**
 * Many steps make each try dear: a few small jobs are walked to the end, 20 batches still come out
 * while somebody waits.
 *
 * @source judgement, set by `tests/bench/bench.ts`
 */
function effortFor(goal: Goal, tasks: number): Effort {
  const patience = Math.min(MOST_PATIENCE, Math.ceil(4_000_000 / tasks ** 2));
  if (goal === "any") return { patience: Math.ceil(patience / 2), tries: { orders: 0, jumps: 3 } };
  return { patience, tries: { orders: Math.min(60, Math.ceil(6000 / tasks)), jumps: 10 } };
}

/**
 * The latest plan that fits, or any.
 *
 * @returns starts by task, and whether it is proved that none is later or, without starts, that
 *   there is none
 */
export function solveNetwork(network: Network, goal: Goal): Searched {
  const latest = latestUnlimited(network);
  if (latest === undefined) return { proved: true };
  if (lastClash(network, latest) === undefined) return { starts: latest, proved: true };
  const { tries, patience } = effortFor(goal, network.tasks.length);
  const known = tryOrders(network, latest, goal, tries);
  if (known === undefined) return searchLatest(network, { goal, patience });
  if (latenessOf(network, known) === latenessOf(network, latest)) {
    return { starts: known, proved: true };
  }
  if (goal === "any") return { starts: known, proved: false };
  return searchLatest(network, { goal, patience, known });
}
