import { ACID_NAMES } from "../quantity/acid-name.ts";
import {
  ACID_MOLAR_MASS,
  ETHANOL_MOLAR_MASS,
  SUCROSE_MOLAR_MASS,
} from "../quantity/molar-mass-table.ts";
import { rootBetween } from "../quantity/solve.ts";
import {
  ACID_FREEZING,
  ETHANOL_FREEZING,
  SUCROSE_FREEZING,
  WATER_FREEZING,
} from "./freezing-table.ts";
import { type Liquid, massOf } from "./liquid.ts";

/** Depression against the ideal 1.86 K per molal, at each row of the table, with 1 for no ethanol. */
const RATIOS: readonly (readonly [number, number])[] = [
  [0, 1],
  ...ETHANOL_FREEZING.map(
    ([fraction, kelvin]) => [fraction, kelvin / (WATER_FREEZING * molality(fraction))] as const,
  ),
];

function molality(fraction: number): number {
  return (1000 * fraction) / (ETHANOL_MOLAR_MASS * (1 - fraction));
}

/** Linear between the rows of the table, held at the last one beyond it. */
function ratioAt(fraction: number): number {
  let [left, low] = RATIOS[0] ?? [0, 1];
  for (const [right, high] of RATIOS) {
    if (fraction <= right) {
      return right === left ? high : low + ((high - low) * (fraction - left)) / (right - left);
    }
    left = right;
    low = high;
  }
  return low;
}

/** Sum of what every solute takes off the freezing point, K, when `water` g are still liquid. */
function depression(liquid: Liquid, water: number): number {
  const kg = water / 1000;
  const ethanol = liquid.ethanol / ETHANOL_MOLAR_MASS / kg;
  const sugar = liquid.sugar / SUCROSE_MOLAR_MASS / kg;
  const solids = liquid.solids / SUCROSE_MOLAR_MASS / kg;
  let kelvin =
    ratioAt(liquid.ethanol / (liquid.ethanol + water)) * WATER_FREEZING * ethanol +
    SUCROSE_FREEZING[0] * sugar +
    SUCROSE_FREEZING[1] * sugar * sugar +
    WATER_FREEZING * (solids + liquid.cation / kg);
  for (const name of ACID_NAMES) {
    kelvin += (ACID_FREEZING[name] * (liquid.acids[name] ?? 0)) / ACID_MOLAR_MASS[name] / kg;
  }
  return kelvin;
}

/**
 * Temperature at which the first ice forms.
 *
 * @param liquid - any amount with water in it
 * @returns degrees C
 * @throws RangeError without water
 * @source ethanol by the CRC Handbook (102nd ed.), sucrose by its molality (fit to the same), acids
 * and other solids by the number of particles; the effects of each in the same water add up
 * @limits checked to 68 % ethanol and 42 % sugar by mass, beyond which it extrapolates; 0.15 K for
 * ethanol alone and 0.03 K for sugar alone, for both together not measured (another way of adding
 * differs by 0.08 K); fruit sugars and honey count as sucrose here and really go up to twice as deep
 * @example
 * freezingPoint(liquidOf({ volume: 700, strength: 0.4, sugarPerLitre: 0, acids: {}, cation: 0, solidsPerLitre: 0 })) // => -23.6 ± 0.2
 */
export function freezingPoint(liquid: Liquid): number {
  if (!(liquid.water > 0)) {
    throw new RangeError(`a freezing point needs water, got ${liquid.water} g`);
  }
  return -depression(liquid, liquid.water);
}

/**
 * Share of a drink that is ice once it has settled at a temperature.
 *
 * @param liquid - any amount with water in it
 * @param temperature - degrees C
 * @returns mass fraction, 0 to 1
 * @throws RangeError without water
 * @source the water still liquid is what freezes at that temperature, see `freezingPoint`
 * @limits at rest and in balance; an undisturbed bottle can stay liquid some degrees colder; above
 * 42 % sugar in the unfrozen part it extrapolates
 * @example
 * iceFraction(liquidOf({ volume: 1000, strength: 0.1, sugarPerLitre: 100, acids: {}, cation: 0, solidsPerLitre: 0 }), -10) // => 0.441 ± 0.01
 */
export function iceFraction(liquid: Liquid, temperature: number): number {
  if (freezingPoint(liquid) <= temperature) return 0;
  const above = (water: number): number => -depression(liquid, water) - temperature;
  const least = 1e-6 * liquid.water;
  const unfrozen = above(least) >= 0 ? 0 : rootBetween(above, least, liquid.water, least);
  return (liquid.water - unfrozen) / massOf(liquid);
}

/** A freezer's usual temperature, and how far it swings, degrees C: judgement. */
export const [FREEZER, FREEZER_SWING] = [-18, 3];

/**
 * Whether ice forms in a bottle kept at a temperature, so that it may thicken or burst.
 *
 * @param liquid - what is in the bottle
 * @param temperature - degrees C, by default that of a freezer
 * @returns true when it begins to freeze
 * @throws RangeError without water
 * @source as `freezingPoint`
 * @limits a freezer swings: leave `FREEZER_SWING` of room
 */
export function freezesAt(liquid: Liquid, temperature = FREEZER): boolean {
  return freezingPoint(liquid) > temperature;
}

/** How a drink behaves in the glass: no ice, a thin icy drink, a slush, or spoonable and harder. */
export type Texture = "liquid" | "icy" | "slush" | "solid";

const SLUSH_FROM = 0.15;
/** Share of ice from which nothing pours any more. */
export const SOLID_FROM = 0.6;

/**
 * How a drink behaves once it has settled at a temperature.
 *
 * @param liquid - any amount with water in it
 * @param temperature - degrees C
 * @returns the texture; between 30 and 45 % ice a slush drinks best
 * @throws RangeError without water
 * @source from memory of practice, not opened: below 15 % ice a thin chilled drink, above 60 % spoonable
 * @limits as `iceFraction`
 */
export function stateAt(liquid: Liquid, temperature: number): Texture {
  const ice = iceFraction(liquid, temperature);
  if (ice === 0) return "liquid";
  if (ice < SLUSH_FROM) return "icy";
  return ice < SOLID_FROM ? "slush" : "solid";
}
