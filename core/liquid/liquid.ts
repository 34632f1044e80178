import { ACID_NAMES, type AcidMasses, totalAcid } from "../quantity/acid-name.ts";
import { ETHANOL_DENSITY, ethanolWaterDensity } from "./ethanol-water.ts";
import { ACID_APPARENT_VOLUME, SOLIDS_APPARENT_VOLUME } from "./solute-table.ts";
import { sucroseApparentVolume } from "./sucrose.ts";

/**
 * What an amount of drink is made of. Everything is mixed by mass: masses add, volumes do not.
 * All masses in g; `cation` in mol.
 */
export interface Liquid {
  readonly ethanol: number;
  readonly water: number;
  /** Dissolved sweet sugars, counted as sucrose. */
  readonly sugar: number;
  readonly acids: AcidMasses;
  /** Net strong cation (mostly potassium of juices), mol: it sets the pH beside the acids. */
  readonly cation: number;
  /** Other dissolved solids: milk sugar, minerals, whey protein, salt. */
  readonly solids: number;
}

/** An empty vessel. */
export const NOTHING: Liquid = {
  ethanol: 0,
  water: 0,
  sugar: 0,
  acids: {},
  cation: 0,
  solids: 0,
};

/**
 * Mass of a liquid.
 *
 * @param liquid - any amount
 * @returns g
 * @limits leaves out the cation (39 g per mol of potassium): its grams count among the solids
 * @example
 * massOf({ ethanol: 30, water: 60, sugar: 8, acids: { citric: 2 }, cation: 0, solids: 0 }) // => 100
 */
export function massOf(liquid: Liquid): number {
  const { ethanol, water, sugar, acids, solids } = liquid;
  return ethanol + water + sugar + totalAcid(acids) + solids;
}

/** Volume of acids and other solids, ml at 20 degrees C. */
export function solutesVolume(liquid: Liquid): number {
  let volume = liquid.solids * SOLIDS_APPARENT_VOLUME;
  for (const name of ACID_NAMES) {
    volume += (liquid.acids[name] ?? 0) * ACID_APPARENT_VOLUME[name];
  }
  return volume;
}

/**
 * Volume of a liquid at 20 degrees C, contraction included.
 *
 * @param liquid - any amount
 * @returns ml at 20 degrees C
 * @source ethanol and water by OIML R 22 (1975), sugar by its apparent volume at the same ratio to
 * water (ICUMSA SPS-4, 1998), acids and other solids by their apparent volumes
 * @limits sugar in spirit is a model: within 0.13 kg/m3 of the brewing relation up to 7 wt% ethanol
 * and 9 wt% extract; for liqueurs no measured density could be opened, and 0.5 to 2 kg/m3
 * (up to 0.05 % vol) is our judgement
 * @example
 * volumeOf({ ethanol: 33.3, water: 66.7, sugar: 0, acids: {}, cation: 0, solids: 0 }) // => 105.48 ± 0.01
 */
export function volumeOf(liquid: Liquid): number {
  const { ethanol, water, sugar } = liquid;
  const solvent = ethanol + water;
  let volume = solutesVolume(liquid);
  if (solvent > 0) volume += (1000 * solvent) / ethanolWaterDensity(ethanol / solvent);
  if (sugar > 0) volume += sugar * sucroseApparentVolume(sugar / water);
  return volume;
}

/** `part` per `whole`; an empty vessel has none of anything. */
const share = (part: number, whole: number): number => (whole > 0 ? part / whole : 0);

/**
 * Density of a liquid at 20 degrees C.
 *
 * @param liquid - any amount
 * @returns kg/m3; 0 for an empty vessel
 * @source as `volumeOf`
 * @example
 * densityOf({ ethanol: 0, water: 50, sugar: 50, acids: {}, cation: 0, solids: 0 }) // => 1229.65 ± 0.01
 */
export function densityOf(liquid: Liquid): number {
  return share(1000 * massOf(liquid), volumeOf(liquid));
}

/**
 * Strength of a liquid: the volume its ethanol would have alone, per volume, both at 20 degrees C.
 *
 * @param liquid - any amount
 * @returns v/v, 0 to 1; 0 for an empty vessel
 * @source the definition in OIML R 22 (1975), pure ethanol 789.24 kg/m3
 * @limits as `volumeOf`
 * @example
 * strengthOf({ ethanol: 33.3, water: 66.7, sugar: 0, acids: {}, cation: 0, solids: 0 }) // => 0.4 ± 0.00002
 */
export function strengthOf(liquid: Liquid): number {
  return share((1000 * liquid.ethanol) / ETHANOL_DENSITY, volumeOf(liquid));
}

/**
 * Sugar as a share of the mass.
 *
 * @param liquid - any amount
 * @returns g of sugar in 100 g; 0 for an empty vessel
 * @limits a refractometer reads higher: it sees acids and alcohol too
 * @example
 * brixOf({ ethanol: 0, water: 60, sugar: 40, acids: {}, cation: 0, solids: 0 }) // => 40
 */
export function brixOf(liquid: Liquid): number {
  return share(100 * liquid.sugar, massOf(liquid));
}

/**
 * Sugar per litre.
 *
 * @param liquid - any amount
 * @returns g per litre at 20 degrees C; 0 for an empty vessel
 * @source as `volumeOf`
 * @example
 * sugarPerLitre({ ethanol: 0, water: 50, sugar: 50, acids: {}, cation: 0, solids: 0 }) // => 614.83 ± 0.01
 */
export function sugarPerLitre(liquid: Liquid): number {
  return share(1000 * liquid.sugar, volumeOf(liquid));
}

/**
 * Acids per litre, all together.
 *
 * @param liquid - any amount
 * @returns g per litre at 20 degrees C; 0 for an empty vessel
 * @source as `volumeOf`
 * @example
 * acidPerLitre({ ethanol: 0, water: 94, sugar: 0, acids: { citric: 6 }, cation: 0, solids: 0 }) // => 61.38 ± 0.01
 */
export function acidPerLitre(liquid: Liquid): number {
  return share(1000 * totalAcid(liquid.acids), volumeOf(liquid));
}

/**
 * Sugar in proportion to acid, by mass.
 *
 * @param liquid - any amount
 * @returns g of sugar per g of acid; null without acid
 * @example
 * sugarToAcid({ ethanol: 0, water: 90, sugar: 8, acids: { citric: 2 }, cation: 0, solids: 0 }) // => 4
 */
export function sugarToAcid(liquid: Liquid): number | null {
  const acid = totalAcid(liquid.acids);
  return acid > 0 ? liquid.sugar / acid : null;
}
