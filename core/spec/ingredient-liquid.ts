import { dairyOf } from "../acid/milk.ts";
import { liquidOf, liquidOfMass, type Makeup } from "../liquid/compose.ts";
import { brixOf, densityOf, type Liquid, massOf, NOTHING } from "../liquid/liquid.ts";
import { scaleLiquid } from "../liquid/mixing.ts";
import { gramsPerLitreOfBrix } from "../liquid/sucrose.ts";
import type { Measured } from "../quantity/amount.ts";
import { accepted, type Result, refused } from "../quantity/result.ts";
import { rootBetween } from "../quantity/solve.ts";
import type { Ingredient } from "./ingredient.ts";

/** An amount of an ingredient: what is in it, and how it is measured out. */
export interface Portion {
  readonly liquid: Liquid;
  /** As measured; 0 for dry goods, which are weighed. */
  readonly ml: number;
  readonly g: number;
}

/** Why an ingredient cannot be mixed. */
export type IngredientRefusal = "ingredient-impossible" | "dry-needs-weight";

/** g that rounded shares of a kilogram may add up to beyond it. */
const KILOGRAM_SLIP = 1e-6;

/**
 * Sugar of an ingredient in g/L. °Brix is grams of sugar per 100 g of the whole liquid, so in a
 * liqueur it has to be solved for.
 */
function sugarOf(ingredient: Ingredient, rest: Omit<Makeup, "sugarPerLitre">): number {
  const { as, value } = ingredient.sweetness;
  if (as === "g/L") return value;
  if (ingredient.strength === 0) return gramsPerLitreOfBrix(value);
  const miss = (sugarPerLitre: number) =>
    brixOf(liquidOf({ ...rest, sugarPerLitre, volume: 1000 })) - value;
  return rootBetween(miss, 0, gramsPerLitreOfBrix(value) * 1.02, 1e-6);
}

function dairyLitre(ingredient: Ingredient): Liquid {
  const dairy = dairyOf(ingredient.dairy ?? "whole");
  return { ...NOTHING, water: dairy.water, solids: dairy.lactose + dairy.otherSolids };
}

function makeupOf(ingredient: Ingredient): Makeup {
  const rest = {
    strength: ingredient.strength,
    acids: ingredient.acids,
    cation: ingredient.cation,
    solidsPerLitre: ingredient.solids ?? 0,
    ...(ingredient.density === undefined ? {} : { density: ingredient.density }),
  };
  return { ...rest, sugarPerLitre: sugarOf(ingredient, rest) };
}

/** Dry goods by weight: what goes over of a kilogram; the rest is strained out. */
function dryKilogram(ingredient: Ingredient): Liquid {
  return {
    ...NOTHING,
    water: 1000 * (ingredient.waterShare ?? 0),
    sugar: ingredient.sweetness.value,
    acids: ingredient.acids,
    solids: ingredient.solids ?? 0,
  };
}

function wetPortion(ingredient: Ingredient, amount: Measured): Portion {
  if (ingredient.dairy !== undefined) {
    const { densityKgPerL } = dairyOf(ingredient.dairy);
    const ml = amount.kind === "volume" ? amount.ml : amount.g / densityKgPerL;
    const liquid = scaleLiquid(dairyLitre(ingredient), ml / 1000);
    return { liquid, ml, g: ml * densityKgPerL };
  }
  const makeup = makeupOf(ingredient);
  const litre = liquidOf({ ...makeup, volume: 1000 });
  const density = ingredient.density ?? densityOf(litre);
  if (amount.kind === "mass") {
    const ml = (amount.g / density) * 1000;
    return { liquid: liquidOfMass({ ...makeup, mass: amount.g }), ml, g: amount.g };
  }
  return {
    liquid: scaleLiquid(litre, amount.ml / 1000),
    ml: amount.ml,
    g: (amount.ml * density) / 1000,
  };
}

/**
 * What an amount of an ingredient is made of.
 *
 * @param ingredient - from the cupboard
 * @param amount - ml for what is poured, g for what is weighed
 * @returns the masses of its parts, with its ml and g, or why it cannot be
 */
export function portionOf(
  ingredient: Ingredient,
  amount: Measured,
): Result<Portion, IngredientRefusal> {
  const about = { name: ingredient.name };
  if (ingredient.kind === "dry") {
    if (amount.kind === "volume") return refused("dry-needs-weight", about);
    const kilogram = dryKilogram(ingredient);
    if (massOf(kilogram) > 1000 + KILOGRAM_SLIP) return refused("ingredient-impossible", about);
    return accepted({ liquid: scaleLiquid(kilogram, amount.g / 1000), ml: 0, g: amount.g });
  }
  try {
    return accepted(wetPortion(ingredient, amount));
  } catch (error) {
    // Strength, sugar and acid that do not fit into one litre together: a slip in the cupboard.
    if (error instanceof RangeError) return refused("ingredient-impossible", about);
    throw error;
  }
}
