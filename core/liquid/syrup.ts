import { requireWithin } from "../quantity/require-within.ts";
import { brixOf, densityOf, type Liquid, NOTHING, sugarPerLitre, volumeOf } from "./liquid.ts";
import { waterOf } from "./mixing.ts";
import { sucroseSolubility } from "./sucrose.ts";

/** A syrup and what the bar wants to know of it, at 20 degrees C. */
export interface Syrup {
  readonly liquid: Liquid;
  /** g of sugar in 100 g */
  readonly brix: number;
  /** kg/m3 */
  readonly density: number;
  readonly gramsPerLitre: number;
  /** yield, ml */
  readonly volume: number;
}

/** g of sugar in a ml of loose granulated sugar: 200 g to the US cup of 236.588 ml. */
const SUGAR_BULK = 0.8454;
/** Shares of honey's mass; the rest is acids, minerals and starch-like sugars. */
const HONEY = { sugar: 0.8, water: 0.175, solids: 0.025 };

function syrupFrom(masses: Pick<Liquid, "sugar" | "water" | "solids">): Syrup {
  for (const [name, mass] of Object.entries(masses)) {
    requireWithin(mass, 0, Number.MAX_VALUE, `${name} in g`);
  }
  const liquid: Liquid = { ...NOTHING, ...masses };
  return {
    liquid,
    brix: brixOf(liquid),
    density: densityOf(liquid),
    gramsPerLitre: sugarPerLitre(liquid),
    volume: volumeOf(liquid),
  };
}

/**
 * A syrup made on the scale, with gum for a gomme.
 *
 * @param sugar - g
 * @param water - g
 * @param gum - g of gum arabic, 0 for a plain syrup
 * @returns the syrup
 * @throws RangeError on a negative mass
 * @source ICUMSA SPS-4 (1998)
 * @limits counts gum as other solids and assumes that nothing boils off
 * @example
 * syrupByWeight(1000, 1000).volume // => 1626.5 ± 0.1
 */
export function syrupByWeight(sugar: number, water: number, gum = 0): Syrup {
  return syrupFrom({ sugar, water, solids: gum });
}

/**
 * A syrup made with a jug: parts of loose sugar and of water by volume.
 *
 * @param sugarMl - loose sugar, ml
 * @param waterMl - water, ml at 20 degrees C
 * @param bulkDensity - g of sugar in a ml as it was scooped: 0.8454 loose, about 0.9 packed (from memory)
 * @returns the syrup
 * @throws RangeError on a negative volume or a bulk density outside 0.4 to 1.2
 * @source ICUMSA SPS-4 (1998); bulk density of the definitions file of GNU units, 200 g to the US cup
 * @limits scooping varies by 5 % or more: weigh instead
 * @example
 * syrupByVolume(236.588, 236.588).brix // => 45.85 ± 0.01
 */
export function syrupByVolume(sugarMl: number, waterMl: number, bulkDensity = SUGAR_BULK): Syrup {
  requireWithin(bulkDensity, 0.4, 1.2, "the bulk density of sugar in g/ml");
  return syrupFrom({ sugar: sugarMl * bulkDensity, water: waterOf(waterMl).water, solids: 0 });
}

/**
 * Honey let down with water.
 *
 * @param honey - g
 * @param water - g
 * @returns the syrup
 * @throws RangeError on a negative mass
 * @source honey as 80 % sugars and 17.5 % water, from memory of food tables, not opened
 * @limits honeys run from 15 to 20 % water: 2 degrees Brix either way in a 1:1; its sugars count as sucrose
 * @example
 * honeySyrup(500, 500).brix // => 40
 */
export function honeySyrup(honey: number, water: number): Syrup {
  return syrupFrom({
    sugar: honey * HONEY.sugar,
    water: honey * HONEY.water + water,
    solids: honey * HONEY.solids,
  });
}

/**
 * Whether sugar can crystallise from a liquid at a temperature.
 *
 * @param liquid - a syrup, without spirit
 * @param temperature - degrees C, 0 to 100
 * @returns true when more sugar is dissolved than water holds
 * @throws RangeError outside 0 to 100 degrees
 * @source as `sucroseSolubility`
 * @limits sucrose in water: honey and acid keep it clear longer, spirit makes it crystallise sooner
 */
export function crystallisesAt(liquid: Liquid, temperature: number): boolean {
  const { sugar, water } = liquid;
  const most = sucroseSolubility(temperature);
  return sugar > 0 && sugar / (sugar + water) > most;
}
