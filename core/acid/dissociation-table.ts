/**
 * Dissociation constants of the acids of the trade, 25 degrees C.
 *
 * pKa are thermodynamic (zero ionic strength). Read 2026-11-25 in the project's reference notes:
 * two-decimal values of all six acids were opened in public tables of organic acids; the third
 * decimal is from memory: citric from Bates & Pinching, J. Am. Chem. Soc. 71 (1949) 1274; phosphoric,
 * tartaric and malic from handbook tables. Citric pK3 is 6.40: the 5.6 that some tables print is an
 * error. Facts carry no licence.
 */
import type { AcidName } from "../quantity/acid-name.ts";

/** What the charge balance needs to know of an acid. */
export interface Dissociation {
  /** Thermodynamic pKa, first proton first. */
  readonly pKa: readonly number[];
  /** Protons given up by pH 8.2, the end of a juice titration, mol per mol. */
  readonly titratable: number;
}

export const DISSOCIATION: Readonly<Record<AcidName, Dissociation>> = {
  citric: { pKa: [3.128, 4.761, 6.396], titratable: 3 },
  malic: { pKa: [3.4, 5.11], titratable: 2 },
  tartaric: { pKa: [3.036, 4.366], titratable: 2 },
  lactic: { pKa: [3.86], titratable: 1 },
  acetic: { pKa: [4.756], titratable: 1 },
  phosphoric: { pKa: [2.148, 7.198, 12.35], titratable: 2 },
};
