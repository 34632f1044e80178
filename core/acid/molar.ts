import { ACID_NAMES, type AcidMasses, type AcidName } from "../quantity/acid-name.ts";
import { ACID_MOLAR_MASS } from "../quantity/molar-mass-table.ts";
import { requireWithin } from "../quantity/require-within.ts";

/**
 * Turns grams of acids into mol per litre.
 *
 * @param acids - g of each
 * @param litres - of the liquid they are in; 1 if left out, so that g/L give mol/L
 * @returns mol/L of each
 * @throws RangeError when a mass is negative or not a number
 * @example
 * molarOf({ citric: 19.2124 }).citric // => 0.1 ± 0.0000001
 */
export function molarOf(acids: AcidMasses, litres = 1): Readonly<Record<AcidName, number>> {
  const molar = { citric: 0, malic: 0, tartaric: 0, lactic: 0, acetic: 0, phosphoric: 0 };
  for (const name of ACID_NAMES) {
    const mass = acids[name] ?? 0;
    requireWithin(mass, 0, Number.MAX_VALUE, `${name} acid in g`);
    molar[name] = mass / ACID_MOLAR_MASS[name] / litres;
  }
  return molar;
}
