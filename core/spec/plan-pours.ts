import type { Liquid } from "../liquid/liquid.ts";
import { scaleLiquid } from "../liquid/mixing.ts";
import type { Poured } from "./batch-amounts.ts";
import type { Ingredient } from "./ingredient.ts";
import { portionOf } from "./ingredient-liquid.ts";
import type { Plan, PlanLine } from "./plan.ts";

/** A line of a plan with what a gram of it is made of. */
export interface PlanPour {
  readonly line: PlanLine;
  readonly ingredient: Ingredient;
  readonly perGram: Liquid;
}

/** So much of it that no digits are lost on the way to a gram. */
const KILOGRAM = 1000;

function pourOf(plan: Plan, line: PlanLine): PlanPour {
  const ingredient = plan.ingredients.find(({ id }) => id === line.ingredientId);
  if (ingredient === undefined) {
    throw new RangeError(`a plan must hold its own ingredients, got none for ${line.name}`);
  }
  const kilogram = portionOf(ingredient, { kind: "mass", g: KILOGRAM });
  if (!kilogram.ok) {
    throw new RangeError(`a planned ingredient must mix, got ${kilogram.refusal}: ${line.name}`);
  }
  return { line, ingredient, perGram: scaleLiquid(kilogram.value.liquid, 1 / KILOGRAM) };
}

/**
 * What the lines of a plan are made of.
 *
 * @throws RangeError when the plan lacks an ingredient of its own, or one that cannot be mixed
 */
export const planPours = (plan: Plan): readonly PlanPour[] =>
  plan.lines.map((line) => pourOf(plan, line));

/** So much of a line, as it goes into the vessel. */
export const poured = (pour: PlanPour, part: PlanLine["before"]): Poured => ({
  ingredient: pour.ingredient,
  liquid: scaleLiquid(pour.perGram, part.g),
  ...part,
});
