import { type Liquid, strengthOf, volumeOf } from "../liquid/liquid.ts";
import { mix, portion, scaleLiquid } from "../liquid/mixing.ts";
import { type TopUpRefusal, topUpFor } from "../spec/top-up.ts";
import { clearOf } from "../spec/wash.ts";
import { measuredYield, type Run } from "./run.ts";
import { milkPoured } from "./wash-progress.ts";

/** How much held-back spirit to pour now, beside what was planned, and why it differs. */
export interface TopUpAdvice {
  /** ml */
  readonly planned: number;
  /** ml; where the rule cannot be met, none if that is nearest, otherwise the planned amount. */
  readonly advised: number;
  /** Measured yield over expected yield; 1 until it is measured. */
  readonly yieldShare: number;
  /** More than was held back: it has to come from another bottle. ml */
  readonly beyondHeldBack: number;
  /** Strength in the bottle if the advice is followed, v/v. */
  readonly strength: number;
  /** Why the rule cannot be met. */
  readonly refusal?: TopUpRefusal;
}

/**
 * What came through the filter, made of what was really poured in; as expected until measured.
 *
 * @source as `clearOf`
 * @limits the punch counts as planned: what was poured short or over is not weighed again
 */
export function clearSoFar(run: Run): Liquid {
  const { plan } = run;
  if (plan.milk === undefined) {
    // Unwashed: what is left after straining, as much of it as was measured.
    return portion(plan.final, measuredYield(run) ?? plan.finalMl);
  }
  const ml = measuredYield(run) ?? plan.yield?.expected ?? 0;
  return clearOf({ punch: plan.mixed, dairy: plan.milk.dairy, milk: milkPoured(run) }, ml);
}

/**
 * An amount of what was set aside.
 *
 * @param ml - as measured out; held-back sugar or acid alone has none and goes in as it is
 */
export const heldBackOf = ({ plan }: Run, ml: number): Liquid =>
  plan.heldBackMl > 0 ? scaleLiquid(plan.heldBack, ml / plan.heldBackMl) : plan.heldBack;

/**
 * The top-up recomputed from the measured yield.
 *
 * @param run - with a measured yield; before that, the plan's
 * @returns the amount to pour beside the planned one, with what it makes
 * @source as `topUpFor`
 * @limits the yield is taken to have the strength of the whole: what drips first and last is not told
 *   apart
 */
export function topUpAdvice(run: Run): TopUpAdvice {
  const { plan } = run;
  const planned = plan.heldBackMl;
  const expected = plan.yield?.expected ?? volumeOf(plan.mixed);
  const measured = measuredYield(run) ?? expected;
  const clear = clearSoFar(run);
  const found = topUpFor({
    rule: plan.spec.topUp,
    plannedYield: expected,
    plannedTopUp: planned,
    measured,
    clear,
    spirit: plan.heldBack,
  });
  // Already stronger than the target: every drop of spirit would take it further off.
  const instead = !found.ok && found.refusal === "target-below-base" ? 0 : planned;
  const advised = found.ok ? found.value : instead;
  return {
    planned,
    advised,
    yieldShare: expected > 0 ? measured / expected : 1,
    beyondHeldBack: Math.max(0, advised - planned),
    strength: strengthOf(mix([clear, heldBackOf(run, advised)])),
    ...(found.ok ? {} : { refusal: found.refusal }),
  };
}
