import { ethanolWaterDensity } from "./ethanol-water.ts";
import { type Liquid, massOf, solutesVolume } from "./liquid.ts";
import { sucroseApparentVolume } from "./sucrose.ts";

/**
 * Volume of a liquid at another temperature than 20 degrees C.
 *
 * @param liquid - any amount
 * @param temperature - degrees C, -20 to 40
 * @returns ml
 * @throws RangeError outside -20 to 40 degrees
 * @source ethanol and water by OIML R 22 (1975), sugar by ICUMSA SPS-4 (1998)
 * @limits sugar counts as in water, below 0 degrees as at 0; acids and other solids as at 20
 * degrees (0.1 % of volume at most for 100 g per litre of them, judgement); no ice
 * @example
 * volumeAt({ ethanol: 0, water: 70, sugar: 30, acids: {}, cation: 0, solids: 0 }, 4) // => 88.367 ± 0.005
 */
export function volumeAt(liquid: Liquid, temperature: number): number {
  const { ethanol, water, sugar } = liquid;
  const solvent = ethanol + water;
  let volume = solutesVolume(liquid);
  if (solvent > 0) {
    volume += (1000 * solvent) / ethanolWaterDensity(ethanol / solvent, temperature);
  }
  if (sugar > 0) volume += sugar * sucroseApparentVolume(sugar / water, Math.max(0, temperature));
  return volume;
}

/**
 * Density of a liquid at another temperature than 20 degrees C.
 *
 * @param liquid - any amount
 * @param temperature - degrees C, -20 to 40
 * @returns kg/m3; 0 for an empty vessel
 * @throws RangeError outside -20 to 40 degrees
 * @source as `volumeAt`
 * @limits as `volumeAt`
 * @example
 * densityAt({ ethanol: 33.3, water: 66.7, sugar: 0, acids: {}, cation: 0, solids: 0 }, 4) // => 958.22 ± 0.01
 */
export function densityAt(liquid: Liquid, temperature: number): number {
  const volume = volumeAt(liquid, temperature);
  return volume > 0 ? (1000 * massOf(liquid)) / volume : 0;
}
