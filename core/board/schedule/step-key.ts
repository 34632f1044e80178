import type { PlacedStep } from "./day-plan.ts";

/** A step by its job and itself, as one word. */
export const stepKey = (job: string, step: string): string => JSON.stringify([job, step]);

/** A plan's steps by `stepKey`. */
export const byStep = (placed: readonly PlacedStep[]): ReadonlyMap<string, PlacedStep> =>
  new Map(placed.map((one) => [stepKey(one.job, one.step), one]));
