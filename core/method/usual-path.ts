import { type Outcome, type Procedure, type Step, stepAfter, stepOf } from "./procedure.ts";

/** What is answered when all goes well. */
export const GOES_WELL: Readonly<Record<NonNullable<Step["asks"]>, Outcome>> = {
  look: "clear",
  taste: "right",
  rescue: "accept",
};

/**
 * The steps of a procedure when all goes well: clear at the first look, right at the first taste.
 *
 * @param from - the step to begin with; the first unless told
 * @returns each step once, so that a procedure which leads back into itself ends too
 * @throws RangeError when the procedure has no such step
 */
export function usualPath(procedure: Procedure, from?: string): readonly Step[] {
  const path: Step[] = [];
  let step = from === undefined ? procedure.steps[0] : stepOf(procedure, from);
  while (step !== undefined && !path.includes(step)) {
    path.push(step);
    step = stepAfter(procedure, step.id, step.asks && GOES_WELL[step.asks]);
  }
  return path;
}
