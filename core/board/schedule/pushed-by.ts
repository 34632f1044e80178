import { MINUTE } from "../../quantity/time-units-table.ts";
import type { PlacedStep } from "./day-plan.ts";
import type { Day } from "./give-way.ts";
import { type Claim, type Network, networkOf, type Task } from "./network.ts";
import { byStep, stepKey } from "./step-key.ts";
import { firstOver, putToUse, unused } from "./timeline.ts";

/** From when to when, epoch ms; nothing where a plan does not have it. */
interface Stretch {
  readonly from: number;
  readonly to: number;
}

interface Change {
  readonly network: Network;
  /** By task, in the plan before and after. */
  readonly before: readonly (PlacedStep | undefined)[];
  readonly after: readonly (PlacedStep | undefined)[];
  readonly now: number;
}

function claimed(plan: Change["before"], { first, last }: Claim): Stretch | undefined {
  const [from, to] = [plan[first.index], plan[last.index]];
  return from === undefined || to === undefined ? undefined : { from: from.startAt, to: to.endAt };
}

const meet = (a: Stretch, b: Stretch): boolean => a.from < b.to && b.from < a.to;

/** Whether a claim, where it was before, would be too much beside all others as they are now. */
function isTooMuch({ network, after }: Change, claim: Claim, old: Stretch): boolean {
  const inUse = unused();
  for (const other of network.claims[claim.of] ?? []) {
    if (other.first.chain === claim.first.chain) continue;
    const there = claimed(after, other);
    if (there !== undefined) putToUse(inUse, there.from, there.to, other.amount);
  }
  const most = (network.capacities[claim.of] ?? Number.POSITIVE_INFINITY) - claim.amount;
  return firstOver(inUse, old.from, old.to, most) !== undefined;
}

const covers = ({ first, last }: Claim, { index }: Task): boolean =>
  first.index <= index && index <= last.index;

const claimsOver = ({ network: { chains } }: Change, task: Task): readonly Claim[] =>
  (chains[task.chain]?.claims ?? []).filter((claim) => covers(claim, task));

/** Whether what a step claims has come to lie where another one was, and both do not fit. */
function takesPlaceOf(change: Change, pusher: Task, task: Task): boolean {
  return claimsOver(change, task).some((mine) => {
    const old = claimed(change.before, mine);
    if (old === undefined) return false;
    const came = claimsOver(change, pusher).some((theirs) => {
      const [was, is] = [claimed(change.before, theirs), claimed(change.after, theirs)];
      const isNew = was === undefined || !meet(was, old);
      return theirs.of === mine.of && is !== undefined && meet(is, old) && isNew;
    });
    return came && isTooMuch(change, mine, old);
  });
}

/** Whether a step, where it was before, no longer goes with the one before or after it. */
function isTornFrom(change: Change, pusher: Task, task: Task): boolean {
  const [moved, old] = [change.after[pusher.index], change.before[task.index]];
  if (moved === undefined || old === undefined) return false;
  const follows = pusher.index + 1 === task.index;
  const [first, then] = follows ? [moved, old] : [old, moved];
  const job = change.network.chains[task.chain]?.job;
  const at = job?.steps.findIndex(({ id }) => id === then.step) ?? -1;
  const idle = then.startAt - first.endAt;
  return idle < 0 || idle > (job?.steps[at]?.mayWaitBefore ?? Number.POSITIVE_INFINITY);
}

function pushes(change: Change, pusher: Task, task: Task): boolean {
  if (pusher.chain !== task.chain) return takesPlaceOf(change, pusher, task);
  return Math.abs(pusher.index - task.index) === 1 && isTornFrom(change, pusher, task);
}

/** Has begun: where that went as planned it pushes nothing. */
const isReality = ({ before, now }: Change, task: Task): boolean =>
  task.pinned && task.low <= now && before[task.index] !== undefined;

/** Is next in its batch, should have begun and has not. */
const isOverdue = ({ network, before, now }: Change, task: Task): boolean =>
  network.chains[task.chain]?.todo === task && (before[task.index]?.startAt ?? now) <= now - MINUTE;

/** What is taken is the same before and after. */
const takenAs = ({ step, low, forMs }: Task): PlacedStep => ({
  job: "",
  step,
  startAt: low,
  endAt: low + forMs,
});

function changeOf(day: Day, before: readonly PlacedStep[], after: readonly PlacedStep[]): Change {
  const network = networkOf(day.jobs, day.limits, day.now);
  const of = (placed: readonly PlacedStep[]) => {
    const known = byStep(placed);
    return network.tasks.map((task) => {
      const job = network.chains[task.chain]?.job;
      return job === undefined ? takenAs(task) : known.get(stepKey(job.id, task.step));
    });
  };
  return { network, before: of(before), after: of(after), now: day.now };
}

/** Tells the cause of whatever a step pushes, and of what that pushes in turn. */
function spread(
  change: Change,
  from: readonly Task[],
  open: readonly Task[],
  causes: Map<Task, PlacedStep>,
): void {
  const queue = [...from];
  for (const pusher of queue) {
    const cause = causes.get(pusher) ?? change.after[pusher.index];
    for (const task of open) {
      if (cause === undefined || causes.has(task) || !pushes(change, pusher, task)) continue;
      causes.set(task, cause);
      queue.push(task);
    }
  }
}

/**
 * Whose reality pushed each step that moved: what went on longer, ended sooner or was not begun.
 *
 * @param day - as it is now
 * @param before - its plan as it was announced
 * @param after - its plan now
 * @param moved - keys of the steps that moved
 * @returns by `stepKey`; steps of which it cannot be told are not there
 * @source from such a step on: a step is pushed where, left in its old place, it would overlap the
 *   one before or after it in its batch or stand too long, or where what it needs is now in use there
 */
export function pushedBy(
  day: Day,
  before: readonly PlacedStep[],
  after: readonly PlacedStep[],
  moved: ReadonlySet<string>,
): ReadonlyMap<string, PlacedStep> {
  const change = changeOf(day, before, after);
  const { tasks, chains } = change.network;
  const keyOf = (task: Task): string => stepKey(chains[task.chain]?.job?.id ?? "", task.step);
  const endOf = ({ index }: Task): number => change.after[index]?.endAt ?? 0;
  const open = tasks.filter((task) => moved.has(keyOf(task)));
  const causes = new Map<Task, PlacedStep>();
  // What goes on longest comes first: it is what still pushes.
  const real = tasks.filter((task) => isReality(change, task));
  spread(
    change,
    real.toSorted((a, b) => endOf(b) - endOf(a)),
    open,
    causes,
  );
  const idle = tasks.filter((task) => isOverdue(change, task) && !causes.has(task));
  spread(
    change,
    idle,
    open.filter((task) => !idle.includes(task)),
    causes,
  );
  return new Map([...causes].map(([task, cause]) => [keyOf(task), cause]));
}
