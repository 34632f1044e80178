import { accepted, type Result } from "../quantity/result.ts";
import {
  type Cupboard,
  type Written,
  type WrittenRefusal,
  writtenAmounts,
} from "./batch-amounts.ts";
import { outcomeOf } from "./batch-outcome.ts";
import { type SizeRefusal, scaleFor } from "./batch-size.ts";
import { pouredShare, type Trial } from "./batch-trial.ts";
import type { HouseRules } from "./house-rules.ts";
import type { Plan } from "./plan.ts";
import type { BatchSize, Spec } from "./spec.ts";

/** Why a batch cannot be planned. */
export type PlanRefusal = WrittenRefusal | SizeRefusal;

function linesOf(written: Written, trial: Trial, scale: number): Plan["lines"] {
  const washed = trial.wash !== undefined;
  // When a target strength decides the top-up, every held-back line is poured in that proportion.
  const poured = pouredShare(written, trial, scale);
  return written.lines.map(({ line, ingredient, portion: { ml, g } }) => {
    const held = washed ? line.heldBack : 0;
    const part = (share: number) => ({ ml: ml * scale * share, g: g * scale * share });
    return {
      lineId: line.id,
      ingredientId: ingredient.id,
      name: ingredient.name,
      weighed: ingredient.kind === "dry",
      before: part(1 - held),
      after: part(held * poured),
    };
  });
}

/**
 * Plans a batch: every amount, and what is predicted at each stage, by mass.
 *
 * @param spec - what is to be made
 * @param cupboard - where its ingredients are looked up
 * @param size - serves, bottles of a size or a final volume, as it stands in the bottle; or the wash
 * vessel it fills, punch and milk; or all that there is of one ingredient
 * @param house - ounce, what curd and filters keep
 * @returns the plan, or why there is none
 * @source mass balance; volumes at 20 degrees C with contraction as `volumeOf`
 */
export function planBatch(
  spec: Spec,
  cupboard: Cupboard,
  size: BatchSize,
  house: HouseRules,
): Result<Plan, PlanRefusal> {
  const written = writtenAmounts(spec, cupboard, house.ounce);
  if (!written.ok) return written;
  const found = scaleFor(spec, written.value, size, house);
  if (!found.ok) return found;
  const { scale, trial } = found.value;
  const { dairy } = written.value;
  const used = written.value.lines.map((one) => one.ingredient);
  return accepted({
    v: 1,
    spec,
    ingredients: [...new Set(dairy === undefined ? used : [...used, dairy])],
    size,
    ounce: house.ounce,
    scale,
    lines: linesOf(written.value, trial, scale),
    ...outcomeOf(spec, trial, dairy?.name ?? "", house),
  });
}
