import { requireWithin } from "../quantity/require-within.ts";
import { OIML_A, OIML_B, OIML_C } from "./ethanol-water-table.ts";
import { polynomial } from "./polynomial.ts";

/** Density of pure ethanol at 20 degrees C, kg/m3 (OIML R 22 at mass fraction 1). */
export const ETHANOL_DENSITY = polynomial(OIML_A, 1);
const WATER_DENSITY = OIML_A[0];

/** A volume of plain spirit (ethanol and water, nothing else) and its strength at 20 degrees C. */
export interface Spirit {
  /** ml */
  readonly volume: number;
  /** v/v, 0 to 1 */
  readonly strength: number;
}

/**
 * Density of a mixture of ethanol and water.
 *
 * @param massFraction - of ethanol, 0 to 1
 * @param temperature - degrees C, -20 to 40
 * @returns kg/m3, true density (in vacuum)
 * @throws RangeError outside either range
 * @source OIML R 22 (1975), general formula
 * @limits measured against published tables: within 5.1e-5 g/mL of Perry (7th ed., 1 to 11 wt%, 20 C)
 * and 1.2e-4 g/mL of NBS (45 to 85 wt%, 10 to 40 C); a mixture that would freeze is treated as liquid
 * @example
 * ethanolWaterDensity(0.333) // => 948.05 ± 0.01
 */
export function ethanolWaterDensity(massFraction: number, temperature = 20): number {
  requireWithin(massFraction, 0, 1, "the mass fraction of ethanol");
  const atTwenty = polynomial(OIML_A, massFraction);
  if (temperature === 20) return atTwenty;
  requireWithin(temperature, -20, 40, "the temperature in degrees C");
  const warmer = temperature - 20;
  const cross = OIML_C.map((row) => massFraction * polynomial(row, massFraction));
  return atTwenty + warmer * polynomial(OIML_B, warmer) + warmer * polynomial(cross, warmer);
}

/**
 * Strength by volume of a mixture of ethanol and water.
 *
 * @param massFraction - of ethanol, 0 to 1
 * @returns v/v at 20 degrees C, 0 to 1
 * @throws RangeError outside 0 to 1
 * @source OIML R 22 (1975): strength = p * rho(p, 20) / rho(1, 20)
 * @example
 * strengthOfMassFraction(0.33300) // => 0.4 ± 0.00002
 * @public the other way of a pair that is checked together
 */
export function strengthOfMassFraction(massFraction: number): number {
  return (massFraction * ethanolWaterDensity(massFraction)) / ETHANOL_DENSITY;
}

/**
 * Mass fraction of ethanol in a mixture with water, from its strength.
 *
 * @param strength - v/v at 20 degrees C, 0 to 1
 * @returns mass fraction, 0 to 1
 * @throws RangeError outside 0 to 1
 * @source OIML R 22 (1975), inverted by Newton's rule
 * @example
 * massFractionOfStrength(0.4) // => 0.33300 ± 0.00002
 */
export function massFractionOfStrength(strength: number): number {
  requireWithin(strength, 0, 1, "the strength (v/v)");
  const ethanol = strength * ETHANOL_DENSITY;
  let p = strength * (0.79 + 0.21 * strength * strength);
  for (let turn = 0; turn < 12; turn += 1) {
    let density = 0;
    let slope = 0;
    for (let power = OIML_A.length - 1; power >= 0; power -= 1) {
      slope = slope * p + density;
      density = density * p + (OIML_A[power] ?? 0);
    }
    const step = (p * density - ethanol) / (density + p * slope);
    p -= step;
    if (Math.abs(step) < 1e-13) break;
  }
  return Math.min(1, Math.max(0, p));
}

const densityOfStrength = (strength: number): number =>
  polynomial(OIML_A, massFractionOfStrength(strength));

/**
 * Water that brings a plain spirit down to a lower strength, contraction included.
 *
 * @param volumeMl - spirit, ml at 20 degrees C
 * @param from - its strength, v/v
 * @param to - the strength wanted, v/v, above 0 and not above `from`
 * @returns water to add, ml at 20 degrees C
 * @throws RangeError when the strengths are not in that order
 * @source mass balance with OIML R 22 densities
 * @limits spirit without sugar; with sugar use `waterToReach`
 * @example
 * waterToReduce(100, 0.96, 0.4) // => 147.053 ± 0.002
 */
export function waterToReduce(volumeMl: number, from: number, to: number): number {
  requireWithin(volumeMl, 0, Number.MAX_VALUE, "the volume of spirit in ml");
  requireWithin(from, 0, 1, "the strength (v/v)");
  if (!(to > 0 && to <= from)) {
    throw new RangeError(`the strength wanted must be above 0 and at most ${from}, got ${to}`);
  }
  const after = ((volumeMl * from) / to) * densityOfStrength(to);
  return Math.max(0, after - volumeMl * densityOfStrength(from)) / WATER_DENSITY;
}

/**
 * Volume and strength of plain spirits poured together: masses add, volumes do not. Strong spirit
 * and water shrink by up to 3.6 %; weak spirit let down far can grow by up to 0.15 %.
 *
 * @param parts - each with its volume (ml at 20 degrees C) and strength (v/v); water has strength 0
 * @returns the blend's volume, ml, and strength, v/v, both at 20 degrees C; nothing poured gives 0 and 0
 * @throws RangeError on a negative volume or a strength outside 0 to 1
 * @source mass balance with OIML R 22 densities
 * @limits spirits without sugar; with sugar use `mix`
 * @example
 * blendSpirits([{ volume: 50, strength: 1 }, { volume: 50, strength: 0 }]).volume // => 96.463 ± 0.001
 */
export function blendSpirits(parts: readonly Spirit[]): Spirit {
  let mass = 0;
  let ethanol = 0;
  for (const { volume, strength } of parts) {
    requireWithin(volume, 0, Number.MAX_VALUE, "a volume of spirit in ml");
    mass += volume * densityOfStrength(strength);
    ethanol += volume * strength * ETHANOL_DENSITY;
  }
  if (mass === 0) return { volume: 0, strength: 0 };
  const volume = mass / polynomial(OIML_A, ethanol / mass);
  return { volume, strength: ethanol / ETHANOL_DENSITY / volume };
}
