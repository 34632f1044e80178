/** The resource of somebody's hands. */
export const PERSON = "person";
/** The resource of a stand that carries a filter. */
export const FILTER_STAND = "filter-stand";

/** So much of something that is there only once or a few times. */
export interface Use {
  readonly resource: string;
  /** In the resource's own unit: people, stands, litres. */
  readonly amount: number;
}

/** One thing to do, or to wait for. Times in ms. */
export interface JobStep {
  readonly id: string;
  readonly kind: "hands-on" | "wait";
  /** Above 0; 0 too for what is over. */
  readonly forMs: number;
  /** Hands-on steps use one person unless a number of people, perhaps 0, is said here. */
  readonly uses: readonly Use[];
  /** Longest idle time since the step before; any where absent. */
  readonly mayWaitBefore?: number;
  /** Epoch ms at which it has really begun. Such steps come before all others of a job. */
  readonly fixedStart?: number;
}

/** Something held from the start of one step to the end of another, idle times between included. */
export interface Hold extends Use {
  readonly fromStep: string;
  readonly toStep: string;
}

/** A batch as the schedule sees it: steps in order, all done by a moment. */
export interface Job {
  readonly id: string;
  readonly name: string;
  /** Epoch ms. */
  readonly readyBy: number;
  /** Epoch ms before which it cannot begin; says nothing once it has. */
  readonly earliest?: number;
  readonly steps: readonly JobStep[];
  readonly holds?: readonly Hold[];
}

/** Something that is not to be had from one moment to another: nobody in, the fridge half full. */
export interface Taken extends Use {
  /** Epoch ms. */
  readonly from: number;
  readonly to: number;
}

/** What there is. A resource that is not listed is never short. */
export interface Limits {
  readonly capacity: Readonly<Record<string, number>>;
  readonly taken?: readonly Taken[];
}

/** A sum of amounts such as 3.7 l may come out this much too high. */
export const SLACK = 1e-9;

const isWithin = (value: number, least: number): boolean =>
  Number.isFinite(value) && value >= least;

function expectAmount(value: number, what: string): void {
  if (!isWithin(value, 0)) throw new RangeError(`${what} must be a number from 0, got ${value}`);
}

function expectOnce(ids: readonly string[], what: string): void {
  const twice = ids.find((id, at) => ids.indexOf(id) !== at);
  if (twice !== undefined) throw new RangeError(`${what} must differ, got ${twice} twice`);
}

function expectStep(step: JobStep, job: string): void {
  const name = `${job}, ${step.id}`;
  if (!isWithin(step.forMs, step.fixedStart === undefined ? Number.MIN_VALUE : 0)) {
    throw new RangeError(`${name}: the time it takes must be ms above 0, got ${step.forMs}`);
  }
  for (const { amount } of step.uses) expectAmount(amount, `${name}: an amount`);
  if (step.mayWaitBefore !== undefined && !(step.mayWaitBefore >= 0)) {
    throw new RangeError(`${name}: idle time must be from 0, got ${step.mayWaitBefore}`);
  }
  if (step.fixedStart !== undefined && !isWithin(step.fixedStart, 0)) {
    throw new RangeError(`${name}: its start must be epoch ms, got ${step.fixedStart}`);
  }
}

function expectHold(hold: Hold, { id, steps }: Job): void {
  const from = steps.findIndex((step) => step.id === hold.fromStep);
  const to = steps.findIndex((step) => step.id === hold.toStep);
  expectAmount(hold.amount, `${id}: an amount held`);
  if (from < 0 || to < from) {
    throw new RangeError(
      `${id} must hold over its own steps, got ${hold.fromStep}..${hold.toStep}`,
    );
  }
}

function expectJob(job: Job): void {
  const { id, steps } = job;
  if (steps.length === 0) throw new RangeError(`job ${id} must have a step`);
  if (!isWithin(job.readyBy, 0) || !isWithin(job.earliest ?? 0, 0)) {
    throw new RangeError(`job ${id} must have its times in epoch ms`);
  }
  expectOnce(
    steps.map((step) => step.id),
    `steps of ${id}`,
  );
  for (const step of steps) expectStep(step, id);
  for (const hold of job.holds ?? []) expectHold(hold, job);
  const open = steps.findIndex((step) => step.fixedStart === undefined);
  if (open >= 0 && steps.slice(open).some((step) => step.fixedStart !== undefined)) {
    throw new RangeError(`${id}: a step has begun before an earlier one`);
  }
}

/** Words that tell of a plan's other bounds. */
const OTHER_BOUNDS = ["time", "standing"];

/**
 * Stops at jobs or limits that only a mistake of ours can have made.
 *
 * @throws RangeError when ids repeat, times or amounts are no numbers, a hold names no step, or a
 *   step has begun before an earlier one
 */
export function expectJobs(jobs: readonly Job[], limits: Limits, now: number): void {
  if (!isWithin(now, 0)) throw new RangeError(`now must be epoch ms, got ${now}`);
  expectOnce(
    jobs.map((job) => job.id),
    "jobs",
  );
  for (const job of jobs) expectJob(job);
  for (const [resource, amount] of Object.entries(limits.capacity)) {
    if (OTHER_BOUNDS.includes(resource)) throw new RangeError(`no resource is named ${resource}`);
    expectAmount(amount, `the capacity of ${resource}`);
  }
  for (const { amount, from, to } of limits.taken ?? []) {
    expectAmount(amount, "an amount taken");
    if (!isWithin(from, 0) || !isWithin(to, from)) {
      throw new RangeError(`taken from must not be after to, got ${from} to ${to}`);
    }
  }
}

/** What a step uses while it goes on, the person of a hands-on step included. */
export function stepUses({ kind, uses }: JobStep): readonly Use[] {
  const told = kind === "wait" || uses.some(({ resource }) => resource === PERSON);
  return told ? uses : [...uses, { resource: PERSON, amount: 1 }];
}
