import { copyOfUsage, type InUse, insertJob, usageOfFacts } from "./insert-job.ts";
import { type Chain, type Network, startIn } from "./network.ts";
import { type Goal, latenessOf } from "./search.ts";

/** How many orders are tried, and how often a job that found no room may go first instead. */
export interface Tries {
  readonly orders: number;
  readonly jumps: number;
}

interface Placed {
  readonly order: readonly Chain[];
  readonly starts: Float64Array;
  readonly worth: number;
}

interface Start {
  readonly network: Network;
  /** Starts by task when nothing is short. */
  readonly latest: Float64Array;
  readonly facts: InUse;
}

/** The latest placing of jobs one after another, or the first job that finds no room. */
function placeAll({ network, latest, facts }: Start, order: readonly Chain[]) {
  const usage = copyOfUsage(facts);
  let starts = latest;
  for (const chain of order) {
    const found = insertJob(network, chain, usage, starts);
    if (found === undefined) return { stuck: chain };
    starts = found;
  }
  return { starts };
}

const first = (order: readonly Chain[], chain: Chain): readonly Chain[] => [
  chain,
  ...order.filter((one) => one !== chain),
];

/** A job that finds no room goes before the others, as often as may be. */
function placeWithJumps(start: Start, order: readonly Chain[], jumps: number): Placed | undefined {
  let now = order;
  for (let jump = 0; jump <= jumps; jump += 1) {
    const found = placeAll(start, now);
    if (found.stuck === undefined) {
      return { order: now, starts: found.starts, worth: latenessOf(start.network, found.starts) };
    }
    now = first(now, found.stuck);
  }
  return undefined;
}

/** Running jobs first: what they hold cannot be moved. Then by different notions of what is hard. */
function firstOrders({ network: { chains }, latest }: Start): readonly (readonly Chain[])[] {
  const open = chains.filter((chain) => chain.todo !== undefined);
  const begun = open.filter(({ tasks }) => tasks[0]?.pinned === true);
  const fresh = open.filter(({ tasks }) => tasks[0]?.pinned !== true);
  const readyBy = ({ job }: Chain): number => job?.readyBy ?? 0;
  const busy = ({ tasks }: Chain): number => tasks.reduce((sum, { forMs }) => sum + forMs, 0);
  const room = ({ tasks, todo }: Chain): number =>
    todo === undefined ? 0 : startIn(latest, todo) - (tasks[0]?.low ?? 0);
  const by = (hard: (chain: Chain) => number) => [
    ...begun,
    ...fresh.toSorted((a, b) => hard(a) - hard(b)),
  ];
  return [
    by((chain) => -readyBy(chain)),
    by(room),
    by(busy),
    by((chain) => -busy(chain)),
    by(readyBy),
  ];
}

/** The order with one job moved to another place: every such order, the near ones first. */
function* neighbours(order: readonly Chain[]): Generator<readonly Chain[]> {
  for (let by = 1; by < order.length; by += 1) {
    for (let from = 0; from + by < order.length; from += 1) {
      const chain = order[from + by];
      if (chain !== undefined) yield order.toSpliced(from + by, 1).toSpliced(from, 0, chain);
    }
  }
}

const better = (found: Placed | undefined, best: Placed | undefined): boolean =>
  found !== undefined && found.worth > (best?.worth ?? Number.NEGATIVE_INFINITY);

/** Goes on from an order with one job moved, as long as that makes a later plan. */
function improve(start: Start, from: Placed, orders: number): Placed {
  let best = from;
  let around = neighbours(best.order);
  for (let left = orders; left > 0; left -= 1) {
    const next = around.next();
    if (next.done === true) return best;
    const found = placeWithJumps(start, next.value, 0);
    if (found === undefined || !better(found, best)) continue;
    best = found;
    around = neighbours(best.order);
  }
  return best;
}

/**
 * Places whole jobs one after another, each as late as it can be, in several orders, and keeps the
 * best; then goes on from the best with one job moved.
 *
 * @param latest - starts by task when nothing is short, epoch ms
 * @returns starts that fit, or nothing where no order tried gave any
 * @source serial generation with the jobs that get stuck moved first; the orders are judgement
 */
export function tryOrders(
  network: Network,
  latest: Float64Array,
  goal: Goal,
  { orders, jumps }: Tries,
): Float64Array | undefined {
  const start: Start = { network, latest, facts: usageOfFacts(network) };
  let best: Placed | undefined;
  for (const order of firstOrders(start)) {
    const found = placeWithJumps(start, order, jumps);
    if (better(found, best)) best = found;
    if (goal === "any" && best !== undefined) return best.starts;
  }
  return best === undefined ? undefined : improve(start, best, orders).starts;
}
