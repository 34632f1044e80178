import { MINUTE, SECOND } from "../quantity/time-units-table.ts";
import type { Procedure, Step } from "./procedure.ts";

/** Waits that a bar has learnt from its own batches, ms by step. */
export interface LearntWaits {
  readonly batches: number;
  readonly waits: Readonly<Record<string, number>>;
}

/** A drip is not looked at sooner or later than this, whatever was learnt: judgement. */
const SOONEST = 20 * SECOND;
const LATEST = 15 * MINUTE;
/** Nobody looks to the second. */
const STEP = 5 * SECOND;

const sane = (ms: number): number =>
  Math.min(LATEST, Math.max(SOONEST, Math.round(ms / STEP) * STEP));

/**
 * A procedure that first asks, during its passes, when this bar's batches were usually ready.
 *
 * @param procedure - as it would be pinned into a run
 * @param learnt - waits of its pass steps; other steps keep theirs
 * @param own - times that the spec sets itself, by step: they come before what was learnt
 * @returns the same procedure with waits of 20 s to 15 min, marked with how many batches they are from
 */
export function withLearntTimes(
  procedure: Procedure,
  learnt: LearntWaits,
  own: Readonly<Record<string, number>> = {},
): Procedure {
  const timed = (step: Step): Step => {
    const wait = Object.hasOwn(learnt.waits, step.id) ? learnt.waits[step.id] : undefined;
    const settled = step.work !== "pass" || step.waitFor === undefined;
    if (wait === undefined || settled || Object.hasOwn(own, step.id)) return step;
    return { ...step, waitFor: sane(wait), learntFrom: learnt.batches };
  };
  return { ...procedure, steps: procedure.steps.map(timed) };
}
