import type { Spec } from "../spec/spec.ts";
import { DAIRY_WASH } from "./dairy-wash.ts";
import { FAT_WASH, LONG_INFUSION, SHORT_INFUSION } from "./infusions.ts";
import type { Procedure, Step } from "./procedure.ts";
import { ACID_JUICE, CORDIAL, FREEZER_BOTTLE, SALINE, SHERBET, SYRUP } from "./syrups.ts";

/** The procedures every house starts with. */
export const PROCEDURES: readonly Procedure[] = [
  DAIRY_WASH,
  LONG_INFUSION,
  SHORT_INFUSION,
  FAT_WASH,
  SHERBET,
  CORDIAL,
  ACID_JUICE,
  SYRUP,
  SALINE,
  FREEZER_BOTTLE,
];

/** A step with the house's own time for this spec, where it has one. */
function timed(step: Step, times: Readonly<Record<string, number>>): Step {
  const own = Object.hasOwn(times, step.id) ? times[step.id] : undefined;
  return own === undefined || step.waitFor === undefined ? step : { ...step, waitFor: own };
}

/**
 * The procedure a spec is made by, with the spec's own times, as it is pinned into a run.
 *
 * @param spec - names its procedure; a washed one that names none is a dairy wash, any other is
 *   stirred and frozen
 * @param own - the house's own procedures, which come before the shipped ones of the same id
 * @returns nothing where the spec names a procedure that is no longer there
 */
export function procedureFor(spec: Spec, own: readonly Procedure[]): Procedure | undefined {
  const fallback = spec.wash === undefined ? FREEZER_BOTTLE.id : DAIRY_WASH.id;
  const id = spec.procedure?.id ?? fallback;
  const found = [...own, ...PROCEDURES].find((one) => one.id === id);
  const times = spec.procedure?.times ?? {};
  return found === undefined
    ? undefined
    : { ...found, steps: found.steps.map((step) => timed(step, times)) };
}
