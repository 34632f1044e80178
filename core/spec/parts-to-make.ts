import type { SpecBook } from "./house-made.ts";
import type { Plan } from "./plan.ts";
import type { Spec } from "./spec.ts";

/** Something a batch needs that the house makes itself: it has to be made before. */
export interface PartToMake {
  readonly ingredientId: string;
  readonly name: string;
  /** What it is made from. */
  readonly spec: Spec;
  /** How much the batch needs, held-back share included, ml. */
  readonly ml: number;
}

/**
 * What has to be made before a batch can be: its ingredients that are made from specs of the house.
 *
 * @param plan - frozen: its amounts are needed, with nothing added for what is spilt
 * @param specs - where what they are made from is looked up; what is not there is left out
 * @param within - ids of specs that are being made already: a spec that leads back to itself ends
 * @returns each ingredient once, in the order of the plan; weighed goods are left out, since a spec
 *   makes so many ml
 */
export function partsToMake(
  plan: Plan,
  specs: SpecBook,
  within: ReadonlySet<string> = new Set(),
): readonly PartToMake[] {
  return plan.ingredients.flatMap(({ id, name, madeFrom }) => {
    const spec = madeFrom === undefined ? undefined : specs.get(madeFrom);
    if (spec === undefined || spec.id === plan.spec.id || within.has(spec.id)) return [];
    const ml = plan.lines
      .filter((line) => line.ingredientId === id && !line.weighed)
      .reduce((sum, { before, after }) => sum + before.ml + after.ml, 0);
    return ml > 0 ? [{ ingredientId: id, name, spec, ml }] : [];
  });
}
