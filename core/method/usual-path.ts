import { type Outcome, type Procedure, type Step, stepAfter, stepOf } from "./procedure.ts";

/** What is answered when all goes well. */
const GOES_WELL: Readonly<Record<NonNullable<Step["asks"]>, Outcome>> = {
  look: "clear",
  taste: "right",
  rescue: "accept",
};

/** Where the work goes after a step when all goes well; nothing after the last. */
export const usuallyAfter = (procedure: Procedure, { id, asks }: Step): Step | undefined =>
  stepAfter(procedure, id, asks && GOES_WELL[asks]);

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
    step = usuallyAfter(procedure, step);
  }
  return path;
}
