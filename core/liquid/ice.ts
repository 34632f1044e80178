import { requireWithin } from "../quantity/require-within.ts";
import { rootBetween } from "../quantity/solve.ts";
import { freezingPoint, iceFraction } from "./freezing.ts";
import { type DrinkOnIce, heatLeft } from "./heat.ts";
import { type Liquid, massOf, strengthOf, volumeOf } from "./liquid.ts";
import { mix, waterOf } from "./mixing.ts";
import { polynomial } from "./polynomial.ts";

/** A drink once it is cold and diluted. */
export interface Served {
  /** ml at 20 degrees C */
  readonly waterAdded: number;
  /** what is in the glass, the ice in it counted as water */
  readonly liquid: Liquid;
  /** degrees C */
  readonly temperature: number;
  /** share of the liquid's mass that is ice */
  readonly ice: number;
}

/** Ice that a drink meets. */
export interface Ice {
  /** degrees C, 0 or below: wet ice is at 0, ice straight from a freezer at -18 */
  readonly temperature: number;
  /** g that end as cold as the drink; left out, only what melts counts */
  readonly mass?: number;
}

/** Water per volume of drink: powers 0 to 2 of the strength. */
const STIRRED = [0.145, 1.246, -1.21] as const;
const SHAKEN = [0.203, 1.742, -1.567] as const;
/** Beyond this strength the parabolas bend down, which is not what ice does. */
const FIT_ENDS = 0.5;
/** Colder than any drink gets on ice: keeps the search inside the tables. */
const COLDEST = -60;
const ROOM = 22;

const gramsOfWater = (volumeMl: number): number => waterOf(volumeMl).water;
const mlOfWater = (mass: number): number => mass / gramsOfWater(1);

/** Cooled by melting `grams` of wet ice, but never below where the diluted drink would freeze. */
function temperatureAfter(drink: Liquid, temperature: number, grams: number): number {
  const meeting: DrinkOnIce = { drink, temperature, ice: grams, iceTemperature: 0 };
  const lowest = Math.min(temperature, freezingPoint({ ...drink, water: drink.water + grams }));
  const left = (end: number): number => heatLeft(meeting, grams, end);
  if (lowest === temperature || left(lowest) <= 0) return lowest;
  return rootBetween(left, lowest, temperature, 1e-6);
}

function byFit(drink: Liquid, temperature: number, fit: readonly number[]): Served {
  const perVolume = polynomial(fit, Math.min(FIT_ENDS, strengthOf(drink)));
  const waterAdded = perVolume * volumeOf(drink);
  return {
    waterAdded,
    liquid: mix([drink, waterOf(waterAdded)]),
    temperature: temperatureAfter(drink, temperature, gramsOfWater(waterAdded)),
    ice: 0,
  };
}

/**
 * A drink stirred on ice, as bars measured it.
 *
 * @param drink - before the ice
 * @param temperature - of the drink before, degrees C
 * @returns the drink strained off its ice
 * @throws RangeError without water
 * @source Arnold, Liquid Intelligence (2014), from memory, not opened:
 * water per volume = -1.21 x^2 + 1.246 x + 0.145 with x the strength before
 * @limits meant for 15 to 35 % ABV at room temperature and the usual 15 to 20 s; taken as constant
 * above 50 %; the temperature is what the heat balance gives for that much melted ice, a few degrees
 * either way (judgement)
 * @example
 * stirOnIce(liquidOf({ volume: 100, strength: 0.3, sugarPerLitre: 60, acids: {}, cation: 0, solidsPerLitre: 0 })).waterAdded // => 40.99 ± 0.01
 */
export function stirOnIce(drink: Liquid, temperature = ROOM): Served {
  return byFit(drink, temperature, STIRRED);
}

/**
 * A drink shaken with ice, as bars measured it.
 *
 * @param drink - before the ice
 * @param temperature - of the drink before, degrees C
 * @returns the drink strained off its ice
 * @throws RangeError without water
 * @source Arnold, Liquid Intelligence (2014), from memory, not opened:
 * water per volume = -1.567 x^2 + 1.742 x + 0.203 with x the strength before
 * @limits as `stirOnIce`; it lies 0.07 to 0.11 volumes above `chillOnIce` between 15 and 35 % ABV
 * (measured): water clinging to wet ice, and the heat of tin and air, which the balance leaves out
 * @example
 * shakeOnIce(liquidOf({ volume: 100, strength: 0.2, sugarPerLitre: 60, acids: {}, cation: 0, solidsPerLitre: 0 })).waterAdded // => 48.87 ± 0.01
 */
export function shakeOnIce(drink: Liquid, temperature = ROOM): Served {
  return byFit(drink, temperature, SHAKEN);
}

interface Settled {
  /** g of ice that became water; negative when water froze */
  readonly melted: number;
  readonly temperature: number;
}

/** Drink and ice in balance; no less than `least` g of ice melt. */
function settle(drink: Liquid, temperature: number, ice: Ice, least: number): Settled {
  requireWithin(ice.temperature, COLDEST, 0, "the temperature of ice in degrees C");
  const most = ice.mass ?? 10 * massOf(drink);
  const meeting = (melted: number): DrinkOnIce => ({
    drink,
    temperature,
    ice: ice.mass ?? melted,
    iceTemperature: ice.temperature,
  });
  const coldEnd = (melted: number): number =>
    Math.max(COLDEST, freezingPoint({ ...drink, water: drink.water + melted }));
  const surplus = (melted: number): number => heatLeft(meeting(melted), melted, coldEnd(melted));
  const warmer = (melted: number, low: number): number =>
    rootBetween((end) => heatLeft(meeting(melted), melted, end), low, temperature, 1e-6);
  if (surplus(most) >= 0) return { melted: most, temperature: warmer(most, coldEnd(most)) };
  if (surplus(least) > 0) {
    const melted = rootBetween(surplus, least, most, 1e-6);
    return { melted, temperature: coldEnd(melted) };
  }
  // Nothing melts: the ice is too cold, or the drink already is.
  return { melted: least, temperature: Math.min(temperature, coldEnd(least)) };
}

/**
 * A drink on ice until both are in balance, then strained: what hard shaking comes close to.
 *
 * @param drink - before the ice
 * @param temperature - of the drink before, degrees C
 * @param ice - its temperature and, when it counts, its mass; by default wet ice, as much as needed
 * @returns the drink strained off its ice
 * @throws RangeError without water, or for ice warmer than 0 degrees
 * @source heat balance with the freezing point of the diluted drink, see `heatLeft`
 * @limits nothing from glass, tin, air or water clinging to the ice: add about 0.1 volumes for wet
 * ice (judgement, the distance to `shakeOnIce`); stirring stops well short of this balance
 * @example
 * chillOnIce(liquidOf({ volume: 1000, strength: 0, sugarPerLitre: 60, acids: {}, cation: 0, solidsPerLitre: 0 }), 22).temperature // => -0.27 ± 0.02
 */
export function chillOnIce(
  drink: Liquid,
  temperature = ROOM,
  ice: Ice = { temperature: 0 },
): Served {
  const { melted, temperature: end } = settle(drink, temperature, ice, 0);
  const waterAdded = mlOfWater(melted);
  return { waterAdded, liquid: mix([drink, waterOf(waterAdded)]), temperature: end, ice: 0 };
}

/**
 * A drink blended with a weighed amount of ice, all of which is drunk.
 *
 * @param drink - before the ice
 * @param iceMass - g
 * @param temperature - of the drink before, degrees C
 * @param iceTemperature - degrees C, 0 or below
 * @returns what comes out: `waterAdded` counts all the ice, `ice` is the share still frozen
 * @throws RangeError without water, on a negative mass, or for ice warmer than 0 degrees
 * @source heat balance with the freezing point of the liquid part, see `heatLeft`
 * @limits the blender's own heat is left out: it melts some of the ice; what would freeze hard is
 * shown at its freezing point
 * @example
 * blendWithIce(liquidOf({ volume: 100, strength: 0.2, sugarPerLitre: 100, acids: {}, cation: 0, solidsPerLitre: 0 }), 120, 4, -10).ice // => 0.476 ± 0.005
 */
export function blendWithIce(
  drink: Liquid,
  iceMass: number,
  temperature = ROOM,
  iceTemperature = 0,
): Served {
  requireWithin(iceMass, 0, Number.MAX_VALUE, "the mass of ice in g");
  const ice: Ice = { temperature: iceTemperature, mass: iceMass };
  const { melted, temperature: end } = settle(drink, temperature, ice, -0.99 * drink.water);
  const waterAdded = mlOfWater(iceMass);
  const liquid = mix([drink, waterOf(waterAdded)]);
  return { waterAdded, liquid, temperature: end, ice: (iceMass - melted) / massOf(liquid) };
}

/**
 * A drink with its water put in beforehand, kept cold in the bottle.
 *
 * @param drink - before the water
 * @param waterMl - ml at 20 degrees C
 * @param temperature - where the bottle is kept, degrees C
 * @returns the drink as poured; `ice` above 0 says that the bottle freezes
 * @throws RangeError on a negative volume or without water
 * @source as `mix` and `iceFraction`
 * @limits as `iceFraction`
 * @example
 * preDilute(waterOf(100), 25, 4).waterAdded // => 25
 */
export function preDilute(drink: Liquid, waterMl: number, temperature: number): Served {
  const liquid = mix([drink, waterOf(waterMl)]);
  return { waterAdded: waterMl, liquid, temperature, ice: iceFraction(liquid, temperature) };
}
