import { totalAcid } from "../quantity/acid-name.ts";
import { ETHANOL_MOLAR_MASS, WATER_MOLAR_MASS } from "../quantity/molar-mass-table.ts";
import {
  ETHANOL_HEAT_CAPACITY,
  ICE_HEAT_CAPACITY,
  MELINDER_CENTRE,
  MELINDER_HEAT_CAPACITY,
  MELINDER_LAST,
  MELTING_HEAT,
  MIXING_HEAT,
  SUGAR_HEAT_CAPACITY,
  WATER_HEAT_CAPACITY,
} from "./heat-table.ts";
import type { Liquid } from "./liquid.ts";
import { polynomial } from "./polynomial.ts";

function melinder(fraction: number, temperature: number): number {
  const by = fraction - MELINDER_CENTRE.fraction;
  return polynomial(
    MELINDER_HEAT_CAPACITY.map((row) => polynomial(row, by)),
    temperature - MELINDER_CENTRE.temperature,
  );
}

/** Heat capacity of ethanol with water, J/(g K). */
function solventHeat(fraction: number, temperature: number): number {
  if (fraction <= MELINDER_LAST) return melinder(fraction, temperature);
  const beyond = (fraction - MELINDER_LAST) / (1 - MELINDER_LAST);
  return (1 - beyond) * melinder(MELINDER_LAST, temperature) + beyond * ETHANOL_HEAT_CAPACITY;
}

/**
 * Heat that warms a liquid by a degree.
 *
 * @param liquid - any amount
 * @param temperature - degrees C, -30 to 40
 * @returns J/K
 * @source Melinder (2010) for ethanol and water, a constant for what is dissolved in it
 * @limits about 1 % (judgement); ethanol above 60 % by mass by a straight line
 * @example
 * heatCapacityOf({ ethanol: 0, water: 100, sugar: 0, acids: {}, cation: 0, solids: 0 }, 5) // => 420.5 ± 0.2
 */
export function heatCapacityOf(liquid: Liquid, temperature: number): number {
  const { ethanol, water, sugar, acids, solids } = liquid;
  const solvent = ethanol + water;
  const dissolved = SUGAR_HEAT_CAPACITY * (sugar + totalAcid(acids) + solids);
  return solvent > 0
    ? dissolved + solvent * solventHeat(ethanol / solvent, temperature)
    : dissolved;
}

/**
 * Heat taken up when the ethanol and water of a liquid were mixed: negative, mixing warms.
 *
 * @param liquid - any amount
 * @param temperature - degrees C, -30 to 40
 * @returns J
 * @source from memory of calorimetric data at 25 degrees C, carried to other temperatures by the heat
 * capacities; see `heat-table.ts`
 * @limits 5 % (judgement); sugar left out
 * @example
 * mixingHeatOf({ ethanol: 46.068, water: 882.735, sugar: 0, acids: {}, cation: 0, solids: 0 }, 25) // => -9800 ± 50
 */
export function mixingHeatOf(liquid: Liquid, temperature: number): number {
  const moles = liquid.ethanol / ETHANOL_MOLAR_MASS;
  if (moles === 0) return 0;
  const fraction = moles / (moles + liquid.water / WATER_MOLAR_MASS);
  let [left, heat, slope] = MIXING_HEAT[0] ?? [0, 0, 0];
  for (const [right, heatThere, slopeThere] of MIXING_HEAT) {
    if (fraction <= right && right > left) {
      const share = (fraction - left) / (right - left);
      heat += share * (heatThere - heat);
      slope += share * (slopeThere - slope);
      break;
    }
    [left, heat, slope] = [right, heatThere, slopeThere];
  }
  return moles * (heat + slope * (temperature - 25));
}

/** A drink and the ice it meets. */
export interface DrinkOnIce {
  readonly drink: Liquid;
  /** degrees C */
  readonly temperature: number;
  /** g of ice that ends at the drink's temperature, melted or not */
  readonly ice: number;
  /** degrees C, 0 or below */
  readonly iceTemperature: number;
}

/**
 * Heat left over when a drink has cooled, its ice has come to the same temperature and some has melted.
 *
 * @param meeting - the drink and the ice before
 * @param melted - g of the ice that became water; negative when water froze
 * @param end - the temperature both have in the end, degrees C
 * @returns J; 0 in balance, negative when more heat was needed than the drink gave
 * @source heat balance: drink, heat of mixing with the meltwater, ice, melting at that temperature
 * @limits nothing comes from glass, tin or air
 */
export function heatLeft(meeting: DrinkOnIce, melted: number, end: number): number {
  const { drink, temperature, ice, iceTemperature } = meeting;
  const after = { ...drink, water: drink.water + melted };
  const melting = MELTING_HEAT + (WATER_HEAT_CAPACITY - ICE_HEAT_CAPACITY) * end;
  return (
    heatCapacityOf(drink, (temperature + end) / 2) * (temperature - end) +
    mixingHeatOf(drink, end) -
    mixingHeatOf(after, end) -
    ice * ICE_HEAT_CAPACITY * (end - iceTemperature) -
    melted * melting
  );
}
