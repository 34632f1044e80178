import type { Dairy } from "../acid/dairy-table.ts";
import { dairyOf } from "../acid/milk.ts";
import { liquidOf, liquidOfMass, type Makeup } from "../liquid/compose.ts";
import { ETHANOL_DENSITY } from "../liquid/ethanol-water.ts";
import { densityOf, type Liquid, massOf, NOTHING, volumeOf } from "../liquid/liquid.ts";
import { scaleLiquid } from "../liquid/mixing.ts";
import { gramsPerLitreOfBrix } from "../liquid/sucrose.ts";
import { totalAcid } from "../quantity/acid-name.ts";
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

/** More than any litre weighs, g. */
const HEAVIEST_LITRE = 3000;

/**
 * Sugar of an ingredient in g/L. °Brix is grams of sugar per 100 g of the whole liquid, so beside
 * alcohol or acid the weight of a litre has to be solved for.
 */
function sugarOf(ingredient: Ingredient, rest: Omit<Makeup, "sugarPerLitre">): number {
  const { as, value } = ingredient.sweetness;
  if (as === "g/L") return value;
  const share = value / 100;
  if (rest.density !== undefined) return share * rest.density;
  const beside: Liquid = {
    ...NOTHING,
    ethanol: rest.strength * ETHANOL_DENSITY,
    acids: rest.acids,
    solids: rest.solidsPerLitre,
  };
  const others = massOf(beside);
  if (others === 0) return gramsPerLitreOfBrix(value);
  const over = (litre: number): number => {
    const water = Math.max(0, (1 - share) * litre - others);
    return volumeOf({ ...beside, sugar: share * litre, water }) - 1000;
  };
  return share * rootBetween(over, others / (1 - share), HEAVIEST_LITRE, 1e-7);
}

/** A dairy that nobody sweetened, soured or strengthened is what the dairy table says. */
function plainDairy({ dairy, strength, sweetness, acids }: Ingredient): Dairy | undefined {
  const plain = strength === 0 && sweetness.value === 0 && totalAcid(acids) === 0;
  return plain && dairy !== undefined ? dairyOf(dairy) : undefined;
}

const dissolvedIn = ({ lactose, otherSolids }: Dairy): number => lactose + otherSolids;

function makeupOf(ingredient: Ingredient): Makeup {
  const milk = ingredient.dairy === undefined ? 0 : dissolvedIn(dairyOf(ingredient.dairy));
  const rest = {
    strength: ingredient.strength,
    acids: ingredient.acids,
    cation: ingredient.cation,
    solidsPerLitre: ingredient.solids ?? milk,
    ...(ingredient.density === undefined ? {} : { density: ingredient.density }),
  };
  return { ...rest, sugarPerLitre: sugarOf(ingredient, rest) };
}

/** Dry goods by weight: what goes over of a kilogram; the rest is strained out. */
function dryKilogram(ingredient: Ingredient): Liquid {
  return {
    ...NOTHING,
    water: 1000 * (ingredient.waterShare ?? 0),
    // 1 °Brix is 10 g in a kilogram.
    sugar: ingredient.sweetness.value * (ingredient.sweetness.as === "brix" ? 10 : 1),
    acids: ingredient.acids,
    cation: ingredient.cation,
    solids: ingredient.solids ?? 0,
  };
}

function dairyPortion(dairy: Dairy, amount: Measured): Portion {
  const { densityKgPerL, water } = dairy;
  const ml = amount.kind === "volume" ? amount.ml : amount.g / densityKgPerL;
  const litre = { ...NOTHING, water, solids: dissolvedIn(dairy) };
  return { liquid: scaleLiquid(litre, ml / 1000), ml, g: ml * densityKgPerL };
}

function wetPortion(ingredient: Ingredient, amount: Measured): Portion {
  const plain = plainDairy(ingredient);
  if (plain !== undefined) return dairyPortion(plain, amount);
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
 * @source as `liquidOf`; plain milk by the dairy table, without fat and casein
 * @limits fat and casein of dairy that was sweetened or strengthened count as water; dry goods
 *   dissolve wholly, but for what their figures leave out
 * @example
 * portionOf(CUPBOARD.find(({ id }) => id === "vodka-40"), { kind: "volume", ml: 1000 }).value.g // => 948.05 ± 0.01
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
