import * as z from "zod/mini";
import { DAY, HOUR, SECOND } from "../quantity/time-units-table.ts";

/** What the filtered liquid looks like. */
export const LOOKS = ["cloudy", "hazy", "clear"] as const;

/** What an infusion tastes like: whether it has had long enough. */
export const TASTES = ["not-yet", "right", "too-far"] as const;

/** What may be done with a run that will not clear. */
export const RESCUES = ["finer-filter", "cold-rest", "accept"] as const;

/** Everything a person may answer to a step that asks. */
export const OUTCOMES = [...LOOKS, ...TASTES, ...RESCUES] as const;

/** Where a vessel stands while a step goes on. */
export const STANDS = ["counter", "fridge", "freezer"] as const;

/** What a kitchen has only so many of. */
export const RESOURCES = [
  "person",
  "filter-stand",
  "fridge",
  "freezer",
  "blender",
  "burner",
] as const;

/** What a step may ask to be measured. */
export const READING_KEYS = [
  "milk",
  "cloudy-run",
  "collected",
  "yield",
  "top-up",
  "bottled",
  "temperature",
  "brix",
] as const;

/** Kinds of hands-on work that the run screen lays out in a way of its own. */
export const WORKS = [
  "build",
  "milk",
  "pour",
  "rest",
  "filter",
  "pass",
  "re-pour",
  "drip",
  "yield",
  "top-up",
  "bottle",
  "label",
  "steep",
  "strain",
  "chill",
  "stir",
  "brix",
  "other",
] as const;

const duration = z.number().check(z.int(), z.gte(SECOND), z.lte(90 * DAY));
const id = z.string().check(z.minLength(1), z.maxLength(60));

/** The answers that end a step which asks; "not yet" is said while it goes on. */
export const ANSWERS = {
  look: LOOKS,
  taste: ["right", "too-far"],
  rescue: RESCUES,
} as const satisfies Readonly<Record<string, readonly (typeof OUTCOMES)[number][]>>;

/** One thing to do or wait for. Times in ms. */
export const stepSchema = z.object({
  id,
  kind: z.enum(["hands-on", "timed-wait", "watched-wait", "reading"]),
  work: z.enum(WORKS),
  /** How long a timed wait lasts, or when a watched wait first asks. */
  waitFor: z.optional(duration),
  /** From how many of the house's own batches that time was learnt. */
  learntFrom: z.optional(z.number().check(z.int(), z.gte(1), z.lte(9999))),
  /** Further moments at which a watched wait asks, from its start. */
  askAt: z.optional(z.array(duration).check(z.maxLength(20))),
  /** How often it asks again until somebody answers. */
  askEvery: z.optional(duration),
  /** A hard stop: past this a watched wait has gone on too long, whatever it tastes like. */
  longestFor: z.optional(duration),
  /** Hands-on time to plan with, where it is not the usual few minutes. */
  handsFor: z.optional(duration),
  stands: z.optional(z.enum(STANDS)),
  uses: z.optional(
    z.array(z.object({ resource: z.enum(RESOURCES), amount: z.number().check(z.gt(0)) })),
  ),
  /** A reading the step cannot be finished without. */
  needs: z.optional(z.enum(READING_KEYS)),
  /** What has to be said before it can be finished: how it looks or tastes, or what to do now. */
  asks: z.optional(z.enum(["look", "taste", "rescue"])),
  /** Where to go when no branch is taken; otherwise the next step in the list. */
  next: z.optional(id),
  /** Where to go for an outcome, from a round on; otherwise the next step in the list. */
  branches: z.array(
    z.object({
      on: z.enum(OUTCOMES),
      to: id,
      fromRound: z.optional(z.number().check(z.int(), z.gte(1), z.lte(99))),
    }),
  ),
  /** Wording of a house's own step; shipped steps are worded by the catalogue. */
  title: z.optional(z.string().check(z.maxLength(80))),
  detail: z.optional(z.string().check(z.maxLength(500))),
});

/** No two steps by one name, and no branch into nowhere: a run could not be walked to its end. */
const hangsTogether = (steps: readonly z.infer<typeof stepSchema>[]): boolean => {
  const ids = new Set(steps.map((step) => step.id));
  const goals = (step: z.infer<typeof stepSchema>) => [
    ...step.branches.map(({ to }) => to),
    ...(step.next === undefined ? [] : [step.next]),
  ];
  const known = steps.every((step) => goals(step).every((goal) => ids.has(goal)));
  return ids.size === steps.length && known;
};

/** How a spec is made: its steps in order. Pinned into a run when it starts. */
export const procedureSchema = z.object({
  id,
  /** What a house calls its own procedure; shipped ones are named by the catalogue. */
  name: z.optional(z.string().check(z.minLength(1), z.maxLength(80))),
  /** From this step on something perishable is in the vessel. */
  perishableFrom: z.optional(id),
  version: z.number().check(z.int(), z.gte(1)),
  steps: z.array(stepSchema).check(z.minLength(1), z.maxLength(60), z.refine(hangsTogether)),
});

/**
 * How long something perishable may stand above 5 degrees C, all told, ms: four hours without
 * temperature control.
 *
 * @source US Food Code 3-501.19 as quoted in state rules (Georgia 511-6-1-.04(6)(i), Minnesota
 *   4626.0408), read in the project's reference notes; local codes differ and come first
 */
export const WARM_AT_MOST = 4 * HOUR;

/** Whether a step goes on without hands. */
export const isWait = ({ kind }: Step): boolean => kind === "timed-wait" || kind === "watched-wait";

/** What a person answers to a step that asks. */
export type Outcome = (typeof OUTCOMES)[number];
/** Where a vessel stands. */
export type Stand = (typeof STANDS)[number];
/** What a step may ask to be measured. */
export type ReadingKey = (typeof READING_KEYS)[number];
/** One thing to do or wait for. */
export type Step = Readonly<z.infer<typeof stepSchema>>;
/** The steps of a preparation. */
export type Procedure = Readonly<z.infer<typeof procedureSchema>>;

/**
 * The step with an id.
 *
 * @throws RangeError when the procedure has no such step
 */
export function stepOf(procedure: Procedure, stepId: string): Step {
  const found = procedure.steps.find((step) => step.id === stepId);
  if (found === undefined) throw new RangeError(`procedure ${procedure.id} has no step ${stepId}`);
  return found;
}

/**
 * Where the work goes after a step.
 *
 * @param procedure - the pinned procedure
 * @param stepId - the step just finished
 * @param outcome - what was seen or tasted, where the step asks for it
 * @param round - how many times this step has been passed through, this time included
 * @returns the next step, or nothing after the last; of several branches for an outcome, the one
 *   that starts at the latest round already reached
 * @throws RangeError when the procedure has no such step, or the step branches to none
 */
export function stepAfter(
  procedure: Procedure,
  stepId: string,
  outcome?: Outcome,
  round = 1,
): Step | undefined {
  const step = stepOf(procedure, stepId);
  const from = (branch: Step["branches"][number]) => branch.fromRound ?? 1;
  const [branch] = step.branches
    .filter((one) => one.on === outcome && from(one) <= round)
    .sort((a, b) => from(b) - from(a));
  const goal = branch?.to ?? step.next;
  if (goal !== undefined) return stepOf(procedure, goal);
  return procedure.steps[procedure.steps.indexOf(step) + 1];
}
