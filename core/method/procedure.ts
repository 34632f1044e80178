import * as z from "zod/mini";

/** What the filtered liquid looks like. */
export const LOOKS = ["cloudy", "hazy", "clear"] as const;

/** What a step may ask to be measured. */
export const READING_KEYS = [
  "milk",
  "cloudy-run",
  "collected",
  "yield",
  "top-up",
  "bottled",
  "temperature",
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
  "other",
] as const;

const duration = z.number().check(z.int(), z.gte(1000), z.lte(90 * 24 * 3_600_000));
const id = z.string().check(z.minLength(1), z.maxLength(60));

/** One thing to do or wait for. Times in ms. */
export const stepSchema = z.object({
  id,
  kind: z.enum(["hands-on", "timed-wait", "watched-wait", "reading"]),
  work: z.enum(WORKS),
  /** How long a timed wait lasts, or when a watched wait first asks. */
  waitFor: z.optional(duration),
  /** How often it asks again until somebody answers. */
  askEvery: z.optional(duration),
  /** A reading the step cannot be finished without. */
  needs: z.optional(z.enum(READING_KEYS)),
  /** Whether it can only be finished by saying what is seen. */
  look: z.optional(z.boolean()),
  /** Where to go for a look; otherwise the next step in the list. */
  branches: z.array(z.object({ look: z.enum(LOOKS), to: id })),
  /** Wording of a house's own step; shipped steps are worded by the catalogue. */
  title: z.optional(z.string().check(z.maxLength(80))),
  detail: z.optional(z.string().check(z.maxLength(500))),
});

/** No two steps by one name, and no branch into nowhere: a run could not be walked to its end. */
const hangsTogether = (steps: readonly z.infer<typeof stepSchema>[]): boolean => {
  const ids = new Set(steps.map((step) => step.id));
  const known = steps.every((step) => step.branches.every(({ to }) => ids.has(to)));
  return ids.size === steps.length && known;
};

/** How a spec is made: its steps in order. Pinned into a run when it starts. */
export const procedureSchema = z.object({
  id,
  version: z.number().check(z.int(), z.gte(1)),
  steps: z.array(stepSchema).check(z.minLength(1), z.maxLength(60), z.refine(hangsTogether)),
});

/** What the filtered liquid looks like. */
export type Look = (typeof LOOKS)[number];
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
 * @param look - what was seen, where the step asks for it
 * @returns the next step, or nothing after the last
 * @throws RangeError when the procedure has no such step, or the step branches to none
 */
export function stepAfter(procedure: Procedure, stepId: string, look?: Look): Step | undefined {
  const step = stepOf(procedure, stepId);
  const branch = step.branches.find((one) => one.look === look);
  if (branch !== undefined) return stepOf(procedure, branch.to);
  return procedure.steps[procedure.steps.indexOf(step) + 1];
}
