import { dairyOf } from "../acid/milk.ts";
import { ALLERGENS, type Allergen } from "./allergen-table.ts";
import type { Cupboard } from "./batch-amounts.ts";
import { CAUTIONS } from "./caution-table.ts";
import { ingredientsThrough, type SpecBook } from "./house-made.ts";
import type { Ingredient } from "./ingredient.ts";
import type { Plan } from "./plan.ts";

/** A milk brings its own whether or not somebody ticked it. */
function brings({ allergens, dairy }: Ingredient): readonly Allergen[] {
  const own = dairy === undefined ? null : dairyOf(dairy).allergen;
  return own === null ? allergens : [...allergens, own];
}

/**
 * Allergens to declare for a drink, in the order of the EU list. What is washed out in part still
 * counts: a dairy-washed drink keeps whey protein, milk sugar and traces of casein.
 *
 * @param ingredients - everything that goes in, the dairy of a wash among them
 * @returns each group once; empty where no ingredient carries one
 * @source order of Regulation (EU) No 1169/2011, Annex II; milk after a wash: the fining practice
 *   code OIV-SECSAN 520-2014 has milk declared where present and detectable (read as an excerpt)
 * @limits only as good as the cupboard; sulphites are declared wherever an ingredient carries them,
 *   without working out whether the drink passes 10 mg/L
 */
export function allergensOf(ingredients: readonly Ingredient[]): readonly Allergen[] {
  const present = new Set(ingredients.flatMap(brings));
  return ALLERGENS.filter((allergen) => present.has(allergen));
}

/**
 * Cautions that a drink inherits from its ingredients: those of the table in its order, then any
 * this version does not know, by name.
 *
 * @param ingredients - everything that goes in
 * @returns each code once
 */
export function cautionsOf(ingredients: readonly Ingredient[]): readonly string[] {
  const present = new Set(ingredients.flatMap(({ cautions }) => cautions));
  if (ingredients.some(({ dairy }) => dairy !== undefined)) present.add("keep-cold");
  const known = CAUTIONS.filter((code) => present.has(code));
  const others = [...present].filter((code) => !known.some((one) => one === code)).sort();
  return [...known, ...others];
}

/**
 * Whether milk is still in a washed drink: the curd takes fat and casein, the rest stays.
 *
 * @param drink - a plan, or what a plan knows of its spec and ingredients
 * @source as `allergensOf`
 */
export const milkStays = ({ spec, ingredients }: Pick<Plan, "spec" | "ingredients">): boolean =>
  spec.wash !== undefined && allergensOf(ingredients).includes("milk");

/** Allergens to declare, and what they could not be looked up for. */
export interface AllergensThrough {
  readonly allergens: readonly Allergen[];
  /** With any of these the list is not complete, and must not be shown as if it were. */
  readonly missing: readonly string[];
}

/**
 * Allergens to declare for a drink, those of its house-made parts among them.
 *
 * @param ingredientIds - everything that goes in, the dairy of a wash among them
 * @param cupboard - where ingredients are looked up
 * @param specs - where what they are made from is looked up
 * @source as `allergensOf`
 * @limits as `allergensOf`
 */
export function allergensThrough(
  ingredientIds: Iterable<string>,
  cupboard: Cupboard,
  specs: SpecBook,
): AllergensThrough {
  const { ingredients, missing } = ingredientsThrough(ingredientIds, cupboard, specs);
  return { allergens: allergensOf(ingredients), missing };
}

/**
 * The cupboard in which everything made in the house carries the allergens and cautions of what it is
 * made from, so that a plan, once frozen, declares them too.
 *
 * @param cupboard - as kept
 * @param specs - where what its ingredients are made from is looked up
 */
export function declaredCupboard(cupboard: Cupboard, specs: SpecBook): Cupboard {
  const declared = [...cupboard.values()].map((ingredient): Ingredient => {
    if (ingredient.madeFrom === undefined) return ingredient;
    const { ingredients } = ingredientsThrough([ingredient.id], cupboard, specs);
    const [allergens, cautions] = [allergensOf(ingredients), cautionsOf(ingredients)];
    return { ...ingredient, allergens: [...allergens], cautions: [...cautions] };
  });
  return new Map(declared.map((ingredient) => [ingredient.id, ingredient]));
}
