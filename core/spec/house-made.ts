import type { Cupboard } from "./batch-amounts.ts";
import type { Ingredient } from "./ingredient.ts";
import type { Spec } from "./spec.ts";

/** Where specs are looked up. */
export type SpecBook = ReadonlyMap<string, Spec>;

/** What goes into a drink once everything the house makes itself is followed to what it is made from. */
export interface IngredientsThrough {
  /** Each once, in the order they are met. */
  readonly ingredients: readonly Ingredient[];
  /** Ids of ingredients and specs that could not be looked up: what they hold is not known. */
  readonly missing: readonly string[];
}

/** Ids of everything that goes into a drink, the dairy of its wash among them; repeats are left in. */
export const usedIn = (spec: Spec): readonly string[] => [
  ...spec.lines.map(({ ingredientId }) => ingredientId),
  ...(spec.wash === undefined ? [] : [spec.wash.dairyId]),
];

/**
 * Follows ingredients that the house makes itself through the specs they are made from, down to what
 * was bought. A spec that leads back to itself is followed once.
 *
 * @param ingredientIds - what goes into the drink
 * @param cupboard - where ingredients are looked up
 * @param specs - where what they are made from is looked up
 */
export function ingredientsThrough(
  ingredientIds: Iterable<string>,
  cupboard: Cupboard,
  specs: SpecBook,
): IngredientsThrough {
  const ingredients = new Map<string, Ingredient>();
  const missing = new Set<string>();
  const waiting = [...ingredientIds];
  for (let id = waiting.shift(); id !== undefined; id = waiting.shift()) {
    const ingredient = cupboard.get(id);
    if (ingredient === undefined) missing.add(id);
    if (ingredient === undefined || ingredients.has(id)) continue;
    ingredients.set(id, ingredient);
    if (ingredient.madeFrom === undefined) continue;
    const spec = specs.get(ingredient.madeFrom);
    if (spec === undefined) missing.add(ingredient.madeFrom);
    else waiting.push(...usedIn(spec));
  }
  return { ingredients: [...ingredients.values()], missing: [...missing] };
}
