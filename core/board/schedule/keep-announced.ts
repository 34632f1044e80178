import { type DayPlan, dayPlanOf, type PlacedStep, placedSteps } from "./day-plan.ts";
import { type Day, giveWay, NO_GIVE } from "./give-way.ts";
import { copyOfUsage, type InUse, insertJob, usageOfFacts } from "./insert-job.ts";
import { insertLate, latestOf } from "./insert-late.ts";
import { type Chain, type Network, networkOf, startIn, type Task } from "./network.ts";
import { latenessOf } from "./search.ts";
import { latestUnlimited } from "./settle.ts";
import { solveNetwork } from "./solve.ts";
import { byStep, stepKey } from "./step-key.ts";

/** How often a job that finds no room may go before the others. Judgement. */
const JUMPS = 10;

interface Keeping {
  readonly network: Network;
  /** By task, epoch ms: the start that was announced, or infinity. */
  readonly wished: Float64Array;
}

const wishOf = ({ wished }: Keeping, task: Task): number => startIn(wished, task);
const staysIn = (keeping: Keeping, starts: Float64Array, task: Task): boolean =>
  startIn(starts, task) === wishOf(keeping, task);

/** Announced starts of work by hand that is still to do and can still begin then. */
function wishes({ tasks, chains }: Network, announced: readonly PlacedStep[]): Float64Array {
  const known = byStep(announced);
  return Float64Array.from(tasks, ({ chain, step, pinned, low }) => {
    const job = chains[chain]?.job;
    const byHand = job?.steps.some(({ id, kind }) => id === step && kind === "hands-on");
    const start = job && known.get(stepKey(job.id, step))?.startAt;
    const can = byHand === true && !pinned && start !== undefined && start >= low;
    return can ? start : Number.POSITIVE_INFINITY;
  });
}

const keptIn = (keeping: Keeping, { tasks }: Chain, starts: Float64Array): number =>
  tasks.filter((task) => staysIn(keeping, starts, task)).length;

/** Places one job where it was announced, as far as that can be, or as late as can be. */
function placeOne(keeping: Keeping, chain: Chain, usage: InUse, starts: Float64Array) {
  const wanted = chain.tasks.filter((task) => wishOf(keeping, task) < Number.POSITIVE_INFINITY);
  if (wanted.length === 0) return insertJob(keeping.network, chain, usage, starts);
  const capped = starts.slice();
  for (const task of wanted) {
    capped[task.index] = Math.min(startIn(starts, task), wishOf(keeping, task));
  }
  const trial = copyOfUsage(usage);
  const asTold = insertJob(keeping.network, chain, trial, capped);
  const kept = asTold === undefined ? 0 : keptIn(keeping, chain, asTold);
  if (kept === wanted.length) return insertJob(keeping.network, chain, usage, capped);
  const late = insertJob(keeping.network, chain, copyOfUsage(usage), starts);
  const better = late === undefined || keptIn(keeping, chain, late) < kept;
  return insertJob(keeping.network, chain, usage, better ? capped : starts);
}

/** Infinity less infinity is no number. */
const compare = (a: number, b: number): number => (a === b ? 0 : a - b);

/** Runs first, what they hold cannot be moved; then the soonest announced, then what is new. */
function firstOrder(keeping: Keeping): readonly Chain[] {
  const soonest = ({ tasks }: Chain): number =>
    Math.min(...tasks.map((task) => wishOf(keeping, task)));
  const begun = ({ tasks }: Chain): number => (tasks[0]?.pinned === true ? 0 : 1);
  return keeping.network.chains
    .filter(({ todo }) => todo !== undefined)
    .toSorted((a, b) => begun(a) - begun(b) || compare(soonest(a), soonest(b)));
}

function placeAll(keeping: Keeping, latest: Float64Array): Float64Array | undefined {
  let order = firstOrder(keeping);
  const facts = usageOfFacts(keeping.network);
  for (let jump = 0; jump <= JUMPS; jump += 1) {
    const usage = copyOfUsage(facts);
    let starts = latest;
    const stuck = order.find((chain) => {
      const found = placeOne(keeping, chain, usage, starts);
      starts = found ?? starts;
      return found === undefined;
    });
    if (stuck === undefined) return starts;
    order = [stuck, ...order.filter((chain) => chain !== stuck)];
  }
  return undefined;
}

/** Whether all work by hand that is still to do stays where it was announced. */
const allStays = (keeping: Keeping, starts: Float64Array): boolean =>
  keeping.network.chains.every(({ job, tasks }) =>
    tasks.every((task, i) => {
      const toDo = job?.steps[i]?.kind === "hands-on" && !task.pinned;
      return !toDo || staysIn(keeping, starts, task);
    }),
  );

/** What stays stays; everything else as late as it can be around it. */
function settleRest(day: Day, keeping: Keeping, starts: Float64Array): Float64Array {
  const { network } = keeping;
  const stays = new Map(
    network.chains.flatMap(({ job, tasks }) =>
      tasks
        .filter((task) => staysIn(keeping, starts, task))
        .map((task) => [stepKey(job?.id ?? "", task.step), startIn(starts, task)] as const),
    ),
  );
  const around = networkOf(day.jobs, day.limits, day.now, (job, step) =>
    stays.get(stepKey(job, step)),
  );
  const found = solveNetwork(around, "latest").starts;
  const later = found !== undefined && latenessOf(network, found) >= latenessOf(network, starts);
  return later ? found : starts;
}

/**
 * A plan in which work by hand begins when it was announced, wherever it still can; what cannot, and
 * what is new, is planned around it as late as may be.
 *
 * @param announced - a plan made before; only its work by hand is kept, waits follow
 * @returns nothing where no plan was found in this way: there may still be one
 * @source jobs placed one after another, runs first, then in the order they were announced in
 */
export function keepAnnounced(day: Day, announced: readonly PlacedStep[]): DayPlan | undefined {
  const network = networkOf(day.jobs, day.limits, day.now);
  const latest = latestUnlimited(network);
  if (latest === undefined) return undefined;
  const keeping = { network, wished: wishes(network, announced) };
  const kept = placeAll(keeping, latest);
  if (kept === undefined) return undefined;
  const starts = allStays(keeping, kept) ? kept : settleRest(day, keeping, kept);
  const proved = latenessOf(network, starts) === latenessOf(network, latest);
  return dayPlanOf(day.jobs, placedSteps(network, starts), proved, day.now);
}

/**
 * The same for a day that does not fit: what finds no room in time is late, the rest stays.
 *
 * @param most - minutes that a job may be late by
 * @returns a plan that says what is late; nothing where none was found
 */
export function keepThoughLate(
  day: Day,
  announced: readonly PlacedStep[],
  most: number,
): DayPlan | undefined {
  const network = networkOf(day.jobs, day.limits, day.now);
  const keeping = { network, wished: wishes(network, announced) };
  const usage = usageOfFacts(network);
  let starts: Float64Array = Float64Array.from(network.tasks, ({ low }) => low);
  const late = new Map<string, number>();
  for (const chain of firstOrder(keeping)) {
    const latest = latestOf(network, chain, starts);
    const found = latest && placeOne(keeping, chain, usage, latest);
    const placed = found
      ? { starts: found, minutes: 0 }
      : insertLate(network, chain, usage, starts, most);
    if (placed === undefined) return undefined;
    starts = placed.starts;
    late.set(chain.job?.id ?? "", placed.minutes);
  }
  const kept = keepAnnounced(giveWay(day, { ...NO_GIVE, late }), announced);
  return kept && dayPlanOf(day.jobs, kept.placed, false, day.now);
}
