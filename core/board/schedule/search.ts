import { lastClash } from "./clash.ts";
import { type Bound, type Claim, type Network, startIn, type Task } from "./network.ts";
import { latestUnlimited, settle } from "./settle.ts";

/** How a search ended. */
export interface Searched {
  /** The best starts by task, epoch ms; nothing where none was found. */
  readonly starts?: Float64Array;
  /** The whole tree was walked: there is nothing better. */
  readonly proved: boolean;
}

/** `latest`: as late as can be; `any`: the first that fits. */
export type Goal = "latest" | "any";

/** What a search starts from. */
export interface SearchFrom {
  readonly goal: Goal;
  /** Starts that fit, to be bettered. */
  readonly known?: Float64Array;
  /** Clashes it may take apart before it gives up. */
  readonly patience: number;
}

interface Walk {
  readonly network: Network;
  readonly goal: Goal;
  best: Float64Array | undefined;
  bestWorth: number;
  left: number;
  cut: boolean;
}

interface Branch {
  readonly then: Task;
  readonly bound: Bound;
  readonly starts: Float64Array;
  readonly worth: number;
}

/**
 * How late a plan is: the sum of the moments at which each job next wants somebody.
 *
 * @returns ms, comparable between plans of one network
 */
export function latenessOf(network: Network, starts: Float64Array): number {
  return network.chains.reduce(
    (sum, { todo }) => sum + (todo === undefined ? 0 : startIn(starts, todo)),
    0,
  );
}

/** How long after the other's start a claim may last: as long as it is known to, among facts. */
const overlap = ({ knownUntil }: Claim, { first }: Claim): number =>
  first.pinned ? Math.max(0, knownUntil - first.low) : 0;

/** One claim over before the other begins, with all that follows from it. */
function branch(walk: Walk, earlier: Claim, later: Claim, from: Float64Array): Branch[] {
  const { last: first } = earlier;
  const { first: then } = later;
  if (earlier.first.chain === then.chain || (first.pinned && then.pinned)) return [];
  const plus = overlap(earlier, later) - first.forMs;
  const starts = from.slice();
  starts[first.index] = startIn(from, then) + plus;
  then.bounds.push({ to: first, plus });
  const holds = settle(walk.network.tasks, starts, [first]);
  then.bounds.pop();
  if (!holds) return [];
  return [{ then, bound: { to: first, plus }, starts, worth: latenessOf(walk.network, starts) }];
}

const isOver = (walk: Walk): boolean =>
  walk.cut || (walk.goal === "any" && walk.best !== undefined);

function explore(walk: Walk, starts: Float64Array): void {
  const clash = lastClash(walk.network, starts);
  if (clash === undefined) {
    walk.best = starts;
    walk.bestWorth = latenessOf(walk.network, starts);
    return;
  }
  if (walk.left === 0) {
    walk.cut = true;
    return;
  }
  walk.left -= 1;
  const branches = clash.claims
    .flatMap((a) => clash.claims.flatMap((b) => (a === b ? [] : branch(walk, a, b, starts))))
    .sort((a, b) => b.worth - a.worth);
  for (const { then, bound, starts: next, worth } of branches) {
    if (isOver(walk)) return;
    if (worth <= walk.bestWorth) continue;
    then.bounds.push(bound);
    explore(walk, next);
    then.bounds.pop();
  }
}

/**
 * Branch and bound: where steps claim more than there is, some two of them must follow each other;
 * tries each order of each such pair, the one that costs least first. Complete: intervals that
 * overlap two by two share a moment (Helly), so a clash is gone only when some pair is apart, or
 * together only while that is a fact.
 *
 * @param network - its bounds are lent out meanwhile and given back
 * @source forbidden sets: M. Bartusch, R. H. Möhring, F. J. Radermacher, Scheduling project networks
 *   with resource constraints and time windows, Annals of Operations Research 16 (1988); from memory
 */
export function searchLatest(network: Network, from: SearchFrom): Searched {
  const root = latestUnlimited(network);
  if (root === undefined) return { proved: true };
  const { known, goal, patience } = from;
  const bestWorth = known === undefined ? Number.NEGATIVE_INFINITY : latenessOf(network, known);
  const walk: Walk = { network, goal, best: known, bestWorth, left: patience, cut: false };
  if (latenessOf(network, root) > bestWorth) explore(walk, root);
  const proved = !walk.cut && (goal === "latest" || walk.best === undefined);
  return { proved, ...(walk.best === undefined ? {} : { starts: walk.best }) };
}
