import type { Ounce } from "../quantity/ounce.ts";
import type { Cupboard } from "./batch-amounts.ts";
import { NEW_HOUSE } from "./house-rules.ts";
import { planBatch } from "./plan-batch.ts";
import type { Spec } from "./spec.ts";

/** Large enough that what the filters keep no longer shows. */
const SERVES = 100;

/**
 * What a spec comes to before anybody has said how much of it is made: what is in it, per litre.
 *
 * @param ounce - which ounce the house pours
 * @returns the plan of a large batch, or why there is none
 * @source as `planBatch`, for a house without batches of its own
 */
export const sizelessPlan = (
  spec: Spec,
  cupboard: Cupboard,
  ounce: Ounce,
): ReturnType<typeof planBatch> =>
  planBatch(spec, cupboard, { by: "serves", serves: SERVES }, { ...NEW_HOUSE, ounce });
