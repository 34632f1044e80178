import { requireWithin } from "../quantity/require-within.ts";
import { rootBetween } from "../quantity/solve.ts";
import { polynomial } from "./polynomial.ts";
import { SPS4_B, SUCROSE_SATURATION, WATER_DENOMINATOR, WATER_NUMERATOR } from "./sucrose-table.ts";

/**
 * Density of water.
 *
 * @param temperature - degrees C, 0 to 100
 * @returns kg/m3
 * @throws RangeError outside 0 to 100 degrees
 * @source the water formula of ICUMSA SPS-4 (1998)
 * @example
 * waterDensity(20) // => 998.2031 ± 0.0001
 */
export function waterDensity(temperature: number): number {
  requireWithin(temperature, 0, 100, "the temperature in degrees C");
  return polynomial(WATER_NUMERATOR, temperature) / (1 + WATER_DENOMINATOR * temperature);
}

const WATER_AT_20 = waterDensity(20);
const SUCROSE_AT_20 = SPS4_B[0] ?? [];

/** What a unit of mass fraction adds to water's density, kg/m3. */
function rise(massFraction: number, temperature: number): number {
  if (temperature === 20) return polynomial(SUCROSE_AT_20, massFraction);
  const warmer = (temperature - 20) / 100;
  return polynomial(
    SPS4_B.map((row) => polynomial(row, massFraction)),
    warmer,
  );
}

/**
 * Density of a solution of sucrose in water.
 *
 * @param massFraction - of sucrose, 0 to 1 (0.5 is 50 degrees Brix)
 * @param temperature - degrees C, 0 to 100
 * @returns kg/m3, true density (in vacuum)
 * @throws RangeError outside either range
 * @source ICUMSA SPS-4 (1998)
 * @limits meant for 0 to 0.85; above that it extrapolates
 * @example
 * sucroseDensity(0.5) // => 1229.65 ± 0.01
 */
export function sucroseDensity(massFraction: number, temperature = 20): number {
  requireWithin(massFraction, 0, 1, "the mass fraction of sucrose");
  const water = temperature === 20 ? WATER_AT_20 : waterDensity(temperature);
  return water + massFraction * rise(massFraction, temperature);
}

/**
 * Sugar per litre of a sugar solution.
 *
 * @param brix - g sucrose in 100 g of solution, 0 to 100
 * @returns g per litre at 20 degrees C
 * @throws RangeError outside 0 to 100
 * @source ICUMSA SPS-4 (1998)
 * @limits meant for sugar in water; acids and alcohol shift it
 * @example
 * gramsPerLitreOfBrix(50) // => 614.83 ± 0.01
 */
export function gramsPerLitreOfBrix(brix: number): number {
  return (brix / 100) * sucroseDensity(brix / 100);
}

/**
 * Degrees Brix of a sugar solution, from its sugar per litre.
 *
 * @param gramsPerLitre - sucrose, g per litre at 20 degrees C, 0 to 1551
 * @returns g sucrose in 100 g of solution
 * @throws RangeError when more sugar is asked for than a litre can hold
 * @source ICUMSA SPS-4 (1998), inverted
 * @example
 * brixOfGramsPerLitre(614.83) // => 50 ± 0.001
 * @public the other way of a pair that is checked together
 */
export function brixOfGramsPerLitre(gramsPerLitre: number): number {
  requireWithin(gramsPerLitre, 0, gramsPerLitreOfBrix(100), "sugar in g per litre");
  return rootBetween((brix) => gramsPerLitreOfBrix(brix) - gramsPerLitre, 0, 100, 1e-9);
}

/**
 * Degrees Brix of a sugar solution, from its density at 20 degrees C.
 *
 * @param density - kg/m3, true density, 998.203 to 1551
 * @returns g sucrose in 100 g of solution
 * @throws RangeError outside that range
 * @source ICUMSA SPS-4 (1998), inverted
 * @example
 * brixOfDensity(1229.65) // => 50 ± 0.002
 * @public checked against the C440 table; no screen asks for it yet
 */
export function brixOfDensity(density: number): number {
  requireWithin(density, WATER_AT_20, sucroseDensity(1), "the density in kg/m3");
  return rootBetween((brix) => sucroseDensity(brix / 100) - density, 0, 100, 1e-9);
}

/**
 * Most sucrose that stays dissolved in water.
 *
 * @param temperature - degrees C, 0 to 100
 * @returns mass fraction of the saturated solution
 * @throws RangeError outside 0 to 100 degrees
 * @source Bubnik, Kadlec et al., Sugar Technologists Manual (1995)
 * @limits pure sucrose in water: acid, which splits sucrose, keeps more dissolved, alcohol less
 * @example
 * sucroseSolubility(20) // => 0.6672 ± 0.0001
 */
export function sucroseSolubility(temperature: number): number {
  requireWithin(temperature, 0, 100, "the temperature in degrees C");
  return polynomial(SUCROSE_SATURATION, temperature) / 100;
}

/**
 * Volume that a gram of sucrose adds to the water it is dissolved in.
 *
 * @param ratio - g sucrose per g water, 0 or more; Infinity for sugar without water
 * @param temperature - degrees C, 0 to 100
 * @returns ml per g
 * @throws RangeError on a negative ratio or a temperature outside its range
 * @source ICUMSA SPS-4 (1998): (1/rho - (1 - w)/rho_water)/w, with w cancelled so that it holds at 0
 * @example
 * sucroseApparentVolume(1) // => 0.62467 ± 0.00001
 */
export function sucroseApparentVolume(ratio: number, temperature = 20): number {
  requireWithin(ratio, 0, Number.POSITIVE_INFINITY, "the ratio of sucrose to water");
  const w = ratio === Number.POSITIVE_INFINITY ? 1 : ratio / (1 + ratio);
  const water = temperature === 20 ? WATER_AT_20 : waterDensity(temperature);
  const perFraction = rise(w, temperature);
  return (1000 * (water - (1 - w) * perFraction)) / (water * (water + w * perFraction));
}
