import { isWait, type Procedure, type Step, stepOf } from "../../method/procedure.ts";
import { usualPath } from "../../method/usual-path.ts";
import { MINUTE, SECOND } from "../../quantity/time-units-table.ts";
import { FILTER_STAND, type Hold, type Job, type JobStep, type Use } from "./job.ts";

/** @source judgement: pouring, weighing, washing up after one thing, in a bar that is set up */
export const HANDS_ON = 5 * MINUTE;
/**
 * Longest idle time before hands-on work, ms: measured milk does not stand about, and the vessel is
 * swapped while the drip is watched. Common practice, no source; other work can wait.
 */
const MAY_WAIT: Readonly<Partial<Record<Step["work"], number>>> = {
  pour: 15 * MINUTE,
  "re-pour": 0,
};

/** What a batch adds to its procedure. */
export interface JobFacts {
  readonly id: string;
  readonly name: string;
  /** Epoch ms. */
  readonly readyBy: number;
  readonly earliest?: number;
  /** Ids of its steps in order, where it does not go the usual way: a run that is being rescued. */
  readonly path?: readonly string[];
  /** How long a step should take, ms, by step id: the drip as forecast, the build of a big batch. */
  readonly expected?: Readonly<Record<string, number>>;
  /** What a step uses beside hands, by step id; what its procedure says unless told. */
  readonly uses?: Readonly<Record<string, readonly Use[]>>;
  /** Longest idle time before a step, ms, by step id. */
  readonly mayWait?: Readonly<Record<string, number>>;
  /** What is held over several steps; one filter stand from the wet filter to the last drip unless told. */
  readonly holds?: readonly Hold[];
  /** Hands-on time where nothing says otherwise, ms; five minutes unless told. */
  readonly handsOnFor?: number;
}

/** A job, with the steps whose time is only a guess. */
export interface JobGuess {
  readonly job: Job;
  /**
   * Ids of waits that end on what is seen and for which nothing is expected: counted until they are
   * first looked at, which may be hours too short.
   */
  readonly guessed: readonly string[];
}

/**
 * A wait begins by itself when the step before it ends; hands-on work when somebody has time, but not
 * so late that a wait with a hard stop has gone past it.
 */
function mayWaitBefore(step: Step, before: Step | undefined, lasts: number): number | undefined {
  if (isWait(step)) return 0;
  const room =
    before?.longestFor === undefined ? Number.POSITIVE_INFINITY : before.longestFor - lasts;
  const most = Math.min(MAY_WAIT[step.work] ?? Number.POSITIVE_INFINITY, Math.max(0, room));
  return Number.isFinite(most) ? most : undefined;
}

/** How long a step should take, ms. */
export function timeOf(step: Step, { expected = {}, handsOnFor = HANDS_ON }: JobFacts): number {
  const usual = (isWait(step) ? step.waitFor : step.handsFor) ?? handsOnFor;
  // A forecast may say that it should be through already.
  return Math.max(SECOND, expected[step.id] ?? usual);
}

/**
 * A step as the schedule sees it.
 *
 * @param before - the step that it follows, if any
 * @param lasts - how long that one takes, or took, ms
 */
export function jobStep(
  step: Step,
  before: Step | undefined,
  lasts: number,
  facts: JobFacts,
): JobStep {
  const { uses = {}, mayWait = {} } = facts;
  const wait = mayWait[step.id] ?? mayWaitBefore(step, before, lasts);
  return {
    id: step.id,
    kind: isWait(step) ? "wait" : "hands-on",
    forMs: timeOf(step, facts),
    uses: uses[step.id] ?? step.uses ?? [],
    ...(wait === undefined ? {} : { mayWaitBefore: wait }),
  };
}

/** A filter stand from the wet filter to the last drip, where there are both. */
export function standHeld(steps: readonly Pick<Step, "id" | "work">[]): readonly Hold[] {
  const from = steps.find(({ work }) => work === "filter");
  const to = steps.findLast(({ work }) => work === "drip" || work === "pass");
  if (from === undefined || to === undefined || steps.indexOf(to) < steps.indexOf(from)) return [];
  return [{ resource: FILTER_STAND, amount: 1, fromStep: from.id, toStep: to.id }];
}

/**
 * A batch as the schedule sees it.
 *
 * @param procedure - taken the usual way unless the facts say otherwise: a cloudy run poured back
 *   twice takes longer than is planned here
 * @param facts - ready-by, and what this batch expects of its steps
 * @throws RangeError when its path names a step that the procedure does not have
 * @source times not expected come from the procedure; hands-on ones are judgement where it has none
 */
export function jobOf(procedure: Procedure, facts: JobFacts): JobGuess {
  const { id, name, readyBy, earliest, expected = {} } = facts;
  const path = facts.path?.map((step) => stepOf(procedure, step)) ?? usualPath(procedure);
  const steps = path.map((step, i) => {
    const before = path[i - 1];
    return jobStep(step, before, before === undefined ? 0 : timeOf(before, facts), facts);
  });
  const guessed = path.filter(
    (step) => step.kind === "watched-wait" && expected[step.id] === undefined,
  );
  const when = earliest === undefined ? { readyBy } : { readyBy, earliest };
  const job = { id, name, ...when, steps, holds: facts.holds ?? standHeld(path) };
  return { job, guessed: guessed.map((step) => step.id) };
}
