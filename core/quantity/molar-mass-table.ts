import type { AcidName } from "./acid-name.ts";

/**
 * Molar masses, g per mol. Acids anhydrous. From memory, checked against the sum of the standard
 * atomic weights. Facts carry no licence.
 */
export const ETHANOL_MOLAR_MASS = 46.068;
export const WATER_MOLAR_MASS = 18.015;
export const SUCROSE_MOLAR_MASS = 342.297;

export const ACID_MOLAR_MASS: Readonly<Record<AcidName, number>> = {
  citric: 192.124,
  malic: 134.087,
  tartaric: 150.087,
  lactic: 90.078,
  acetic: 60.052,
  phosphoric: 97.994,
};
