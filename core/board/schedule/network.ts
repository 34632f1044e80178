import { type Job, type JobStep, type Limits, stepUses, type Taken, type Use } from "./job.ts";

/** An upper bound: the start of `to` is at most its owner's start plus `plus` ms. */
export interface Bound {
  readonly to: Task;
  readonly plus: number;
}

/** A step in the network of bounds. */
export interface Task {
  readonly index: number;
  readonly chain: number;
  readonly step: string;
  readonly forMs: number;
  /** Earliest and latest start before resources are looked at, epoch ms. */
  readonly low: number;
  readonly top: number;
  /** Its start is a fact. */
  readonly pinned: boolean;
  readonly bounds: Bound[];
  /** Demand while it goes on, and in the idle time after it; by resource, what is held included. */
  readonly during: readonly Demand[];
  readonly after: readonly Demand[];
}

/** So much of a limited resource. */
export interface Demand {
  readonly of: number;
  readonly amount: number;
}

/** A job's steps; what is taken is a chain without a job. */
export interface Chain {
  readonly job?: Job;
  readonly tasks: readonly Task[];
  /** The first step that has not begun. */
  readonly todo?: Task;
  readonly claims: readonly Claim[];
}

/** An amount of a resource from the start of one task to the end of another. */
export interface Claim extends Demand {
  readonly first: Task;
  readonly last: Task;
  /** Until when it is a fact, epoch ms; minus infinity where none of it is. */
  readonly knownUntil: number;
  /** It has begun. */
  readonly begun: boolean;
}

/** Jobs and limits as the search walks over them. */
export interface Network {
  readonly chains: readonly Chain[];
  readonly tasks: readonly Task[];
  readonly capacities: readonly number[];
  /** By resource. */
  readonly claims: readonly (readonly Claim[])[];
  readonly resources: readonly string[];
}

/** The lookup is checked: a start that is not there would spoil every sum. */
const at = (figures: Float64Array, index: number): number => figures[index] ?? Number.NaN;

/** When a task begins, epoch ms. */
export const startIn = (starts: Float64Array, task: Task): number => at(starts, task.index);

/** When a task ends, epoch ms. */
export const endIn = (starts: Float64Array, task: Task): number =>
  at(starts, task.index) + task.forMs;

/** The moment at which a step of a job has to begin, epoch ms, where it is set. */
export type SetStart = (job: string, step: string) => number | undefined;

interface Within {
  readonly resources: readonly string[];
  readonly now: number;
  readonly standing: SetStart;
}

function summed(uses: readonly Use[], resources: readonly string[]): readonly Demand[] {
  return resources
    .map((name, of) => ({
      of,
      amount: uses.reduce((sum, use) => sum + (use.resource === name ? use.amount : 0), 0),
    }))
    .filter(({ amount }) => amount > 0);
}

/** What is held over step `i` and, where `over` is 1, still held in the idle time after it. */
function heldAt(job: Job, i: number, over: 0 | 1): readonly Use[] {
  const place = (id: string): number => job.steps.findIndex((step) => step.id === id);
  return (job.holds ?? []).filter(
    ({ fromStep, toStep }) => place(fromStep) <= i && i + over <= place(toStep),
  );
}

/** The latest a step can begin by itself: only the last one is bound by ready-by. */
function topOf(job: Job, step: JobStep, { now, standing }: Within): number {
  const start = step.fixedStart ?? standing(job.id, step.id) ?? Number.POSITIVE_INFINITY;
  const isDone = start + step.forMs <= now;
  return step !== job.steps.at(-1) || isDone ? start : Math.min(start, job.readyBy - step.forMs);
}

function chainOf(job: Job, chain: number, firstIndex: number, within: Within): Chain {
  const { resources, now, standing } = within;
  const hasBegun = job.steps[0]?.fixedStart !== undefined;
  let free = Math.max(now, hasBegun ? 0 : (job.earliest ?? 0));
  const tasks = job.steps.map((step, i): Task => {
    const low = step.fixedStart ?? Math.max(free, standing(job.id, step.id) ?? 0);
    free = Math.max(free, low + step.forMs);
    return {
      index: firstIndex + i,
      chain,
      step: step.id,
      forMs: step.forMs,
      low,
      top: topOf(job, step, within),
      pinned: step.fixedStart !== undefined,
      bounds: [],
      during: summed([...stepUses(step), ...heldAt(job, i, 0)], resources),
      after: summed(heldAt(job, i, 1), resources),
    };
  });
  tasks.forEach((task, i) => {
    const next = tasks[i + 1];
    if (next !== undefined && !next.pinned) tie(task, next, job.steps[i + 1]?.mayWaitBefore);
  });
  const todo = tasks.find((task) => !task.pinned);
  const claims = claimsOf(job, tasks, within);
  return { job, tasks, claims, ...(todo === undefined ? {} : { todo }) };
}

/** One after the other, and the idle time between them no longer than it may be. */
function tie(task: Task, next: Task, mayWait = Number.POSITIVE_INFINITY): void {
  next.bounds.push({ to: task, plus: -task.forMs });
  if (mayWait < Number.POSITIVE_INFINITY) {
    task.bounds.push({ to: next, plus: task.forMs + mayWait });
  }
}

function takenChain(taken: Taken, chain: number, index: number, within: Within): Chain {
  const task: Task = {
    index,
    chain,
    step: "taken",
    forMs: taken.to - taken.from,
    low: taken.from,
    top: taken.from,
    pinned: true,
    bounds: [],
    during: summed([taken], within.resources),
    after: [],
  };
  return { tasks: [task], claims: claimsOf(undefined, [task], within) };
}

function claimsOf(
  job: Job | undefined,
  tasks: readonly Task[],
  { resources, now }: Within,
): readonly Claim[] {
  const fact = tasks.findLast((task) => task.pinned);
  const endOf = (task = fact): number => (task === undefined ? 0 : task.low + task.forMs);
  const claim = (first: Task, last: Task, demand: Demand): Claim => ({
    ...demand,
    first,
    last,
    knownUntil: first.pinned ? endOf(last.pinned ? last : fact) : Number.NEGATIVE_INFINITY,
    begun: first.pinned && first.low <= now,
  });
  if (job === undefined) {
    return tasks.flatMap((task) => task.during.map((demand) => claim(task, task, demand)));
  }
  const byId = new Map(tasks.map((task) => [task.step, task]));
  const used = job.steps.map((step) => ({ from: step.id, to: step.id, uses: stepUses(step) }));
  const held = (job.holds ?? []).map((hold) => ({
    from: hold.fromStep,
    to: hold.toStep,
    uses: [hold],
  }));
  return [...used, ...held].flatMap(({ from, to, uses }) => {
    const [first, last] = [byId.get(from), byId.get(to)];
    if (first === undefined || last === undefined) return [];
    return summed(uses, resources).map((demand) => claim(first, last, demand));
  });
}

/**
 * The network of a day's jobs: who waits for whom, how long at most, and what each one claims.
 *
 * @param now - epoch ms; nothing that has not begun can begin before
 * @param standing - steps not begun that must begin at a moment and no other; unlike what has begun,
 *   they still have to fit
 */
export function networkOf(
  jobs: readonly Job[],
  limits: Limits,
  now: number,
  standing: SetStart = () => undefined,
): Network {
  const resources = Object.keys(limits.capacity);
  const within = { resources, now, standing };
  const chains: Chain[] = [];
  let index = 0;
  for (const job of jobs) {
    chains.push(chainOf(job, chains.length, index, within));
    index += job.steps.length;
  }
  for (const taken of limits.taken ?? []) {
    chains.push(takenChain(taken, chains.length, index, within));
    index += 1;
  }
  const claims = chains.flatMap((chain) => chain.claims);
  return {
    chains,
    tasks: chains.flatMap((chain) => chain.tasks),
    capacities: Object.values(limits.capacity),
    claims: resources.map((_, of) => claims.filter((one) => one.of === of)),
    resources,
  };
}
