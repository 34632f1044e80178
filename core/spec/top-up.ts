import { type Liquid, volumeOf } from "../liquid/liquid.ts";
import { spiritToReach } from "../liquid/reach-strength.ts";
import { accepted, type Result, refused } from "../quantity/result.ts";
import type { TopUpRule } from "./spec.ts";

/** Why a top-up cannot be worked out. */
export type TopUpRefusal = "target-above-spirit" | "target-below-base" | "nothing-held-back";

/**
 * How much held-back spirit the planned yield takes.
 *
 * @param rule - the spec's rule
 * @param clear - what is expected through the filter
 * @param whole - all that the spec holds back, at this batch size
 * @param wholeMl - its ml as measured out
 * @returns ml to pour after the wash, as measured out; or why the target cannot be reached, with the
 *   `nearest` strength that can
 * @throws RangeError when a target strength is not 0 to 1
 * @source mass balance as `spiritToReach`
 */
export function heldBackFor(
  rule: TopUpRule,
  clear: Liquid,
  whole: Liquid,
  wholeMl: number,
): Result<number, TopUpRefusal> {
  if (rule.rule !== "strength") return accepted(wholeMl);
  if (!(wholeMl > 0)) return refused("nothing-held-back");
  if (!(volumeOf(clear) > 0)) return accepted(0);
  const found = spiritToReach(clear, whole, rule.target);
  if (!found.ok) return found;
  // Several held-back lines shrink together: what is measured out is not what it comes to.
  return accepted((wholeMl * found.value.volume) / volumeOf(whole));
}

/** What the plan said, and what came through. ml. */
export interface MeasuredYield {
  readonly rule: TopUpRule;
  /** Planned yield and top-up. */
  readonly plannedYield: number;
  readonly plannedTopUp: number;
  /** What came through the filter: its volume and what it is made of. */
  readonly measured: number;
  readonly clear: Liquid;
  readonly spirit: Liquid;
}

/**
 * The top-up for the yield that was measured.
 *
 * @param one - volumes in ml
 * @returns ml of held-back spirit: in the planned proportion to the yield, or what the target
 *   strength takes, or the planned amount whatever came through
 * @throws RangeError when a target strength is not 0 to 1
 * @source proportion: V = V_plan * yield / yield_plan; strength: mass balance as `spiritToReach`
 * @example
 * topUpFor({ rule: { rule: "proportion" }, plannedYield: 4400, plannedTopUp: 500, measured: 3960, clear: NOTHING, spirit: NOTHING }).value // => 450
 */
export function topUpFor(one: MeasuredYield): Result<number, TopUpRefusal> {
  switch (one.rule.rule) {
    case "fixed":
      return accepted(one.plannedTopUp);
    case "proportion":
      return accepted(
        one.plannedYield > 0 ? (one.plannedTopUp * one.measured) / one.plannedYield : 0,
      );
    case "strength":
      return heldBackFor(one.rule, one.clear, one.spirit, one.plannedTopUp);
  }
}
