import { SECOND } from "../quantity/time-units-table.ts";
import { DAIRY_WASH } from "./dairy-wash.ts";
import type { Procedure, Step } from "./procedure.ts";

/** How long each wait lasts in practice, ms: long enough to see it count down and hear it ring. */
const WAITS: Readonly<Record<string, number>> = {
  curdle: 6 * SECOND,
  "first-pass": 4 * SECOND,
  "check-clear": 4 * SECOND,
  "cold-rest": 6 * SECOND,
  "slow-drip": 8 * SECOND,
};
/** Left alone it rings again soon enough to be noticed, and not so soon that it nags. */
const AGAIN = 15 * SECOND;

function shortened(step: Step): Step {
  const waitFor = WAITS[step.id];
  return waitFor === undefined ? step : { ...step, waitFor, askEvery: AGAIN };
}

/**
 * The dairy wash to be walked through once, dry: the same steps with their waits cut to seconds.
 * Nothing spoils in it, for nothing is in the vessel.
 */
export const PRACTICE_WASH: Procedure = {
  id: "practice-wash",
  version: 1,
  steps: DAIRY_WASH.steps.map(shortened),
};
