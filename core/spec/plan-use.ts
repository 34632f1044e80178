import type { Ingredient } from "./ingredient.ts";
import type { Plan } from "./plan.ts";

/** How much of an ingredient a plan takes, all its lines together. */
export interface PlanUse {
  readonly id: string;
  readonly name: string;
  /** Weighed rather than measured. */
  readonly weighed: boolean;
  readonly ml: number;
  readonly g: number;
  /** Nothing in a plan that came without it. */
  readonly ingredient?: Ingredient;
}

/** What is measured out for the punch before it meets the milk, ml; weighed dry goods have none. */
export const punchMeasuredOut = ({ lines }: Pick<Plan, "lines">): number =>
  lines.reduce((sum, { before }) => sum + before.ml, 0);

/** Every amount of a plan as it stands in its lines, the milk last. */
function amountsOf(plan: Plan): readonly Omit<PlanUse, "ingredient">[] {
  const lines = plan.lines.map(({ ingredientId, name, weighed, before, after }) => ({
    id: ingredientId,
    name,
    weighed,
    ml: before.ml + after.ml,
    g: before.g + after.g,
  }));
  const { milk, spec } = plan;
  if (milk === undefined || spec.wash === undefined) return lines;
  const { name, ml, g } = milk;
  return [...lines, { id: spec.wash.dairyId, name, weighed: false, ml, g }];
}

/**
 * What a plan takes of each ingredient: lines of the same ingredient and its milk added up.
 *
 * @returns in the order of the plan, amounts in ml and g
 */
export function usesOf(plan: Plan): readonly PlanUse[] {
  const uses = new Map<string, PlanUse>();
  for (const amount of amountsOf(plan)) {
    const before = uses.get(amount.id);
    const ingredient = plan.ingredients.find(({ id }) => id === amount.id);
    uses.set(amount.id, {
      ...(ingredient === undefined ? {} : { ingredient }),
      ...amount,
      ml: amount.ml + (before?.ml ?? 0),
      g: amount.g + (before?.g ?? 0),
    });
  }
  return [...uses.values()];
}
