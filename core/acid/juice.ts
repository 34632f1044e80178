import { type AcidMasses, totalAcid } from "../quantity/acid-name.ts";
import { ACID_MOLAR_MASS } from "../quantity/molar-mass-table.ts";
import { requireWithin } from "../quantity/require-within.ts";
import { accepted, type Result, refused } from "../quantity/result.ts";
import { chargeAt, chargesOf, pHOf } from "./charge-balance.ts";
import { DISSOCIATION } from "./dissociation-table.ts";
import { molarOf } from "./molar.ts";

/** A juice outside these has been misread or mistyped. */
const LOWEST = 1;
const HIGHEST = 7.5;
/** More than any juice or cordial, g/L. */
const MOST_ACID = 500;
/** Where a juice's titration ends by custom. */
const TITRATION_END = 8.2;

/** Why a pH was not believed. */
export type JuicePhRefusal = "ph-out-of-range" | "ph-below-its-acids";

/** Net strong cation at which acids rest at a pH, mol/L; below 0 where a strong acid would be needed. */
function cationHolding(acids: AcidMasses, pH: number): number {
  requireWithin(totalAcid(acids), 0, MOST_ACID, "the acids of a juice, together, in g/L");
  const charges = chargesOf({ acids: molarOf(acids), cation: 0 });
  let cation = 0;
  // The cation is itself part of the ionic strength: each round takes up what the last left over.
  for (let turn = 0; turn < 40; turn += 1) {
    const left = chargeAt({ ...charges, cation }, pH);
    cation -= left;
    if (Math.abs(left) < 1e-10) break;
  }
  return cation;
}

/**
 * Net strong cation (mostly potassium) that gives a juice its pH, from a measured or typical pH.
 *
 * @param acids - g/L of each
 * @param pH - measured or typical, at about 25 degrees C
 * @returns mol/L, or a refusal: the pH is outside 1 to 7.5, or lower than these acids alone can make
 * @throws RangeError when a mass is negative or not a number, or all together exceed 500 g/L
 * @source charge balance (charge-balance.ts) solved for the cation
 * @limits a pH read 0.1 too high or low moves a lemon's cation by about a third
 * @example
 * cationToReach({ citric: 48, malic: 2 }, 2.3).value // => 0.0333 ± 0.0005
 */
export function cationToReach(acids: AcidMasses, pH: number): Result<number, JuicePhRefusal> {
  if (!(pH >= LOWEST && pH <= HIGHEST)) {
    return refused("ph-out-of-range", { pH, low: LOWEST, high: HIGHEST });
  }
  const cation = cationHolding(acids, pH);
  if (cation >= 0) return accepted(cation);
  return refused("ph-below-its-acids", { pH, low: pHOf({ acids: molarOf(acids), cation: 0 }) });
}

/**
 * Titratable acidity of a juice, as citric acid: the lye that brings it to pH 8.2.
 *
 * @param acids - g/L of each
 * @param cation - net strong cation, mol/L
 * @returns g/L as anhydrous citric acid (64.04 g per mol of lye)
 * @throws RangeError when an amount is negative or not a number
 * @source charge balance (charge-balance.ts); the end point is custom (8.1 in fruit juice methods)
 * @limits counts named acids only: ascorbic acid adds up to 0.2 g/L in citrus
 * @example
 * titratableAcidity({ citric: 48, malic: 2 }, 0.034) // => 47.7 ± 0.1
 */
export function titratableAcidity(acids: AcidMasses, cation: number): number {
  requireWithin(cation, 0, 10, "a net strong cation in mol/L");
  const lye = cationHolding(acids, TITRATION_END) - cation;
  return (lye * ACID_MOLAR_MASS.citric) / DISSOCIATION.citric.titratable;
}
