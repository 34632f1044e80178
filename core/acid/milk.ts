import { requireWithin } from "../quantity/require-within.ts";
import { chargeAt, chargesOf, type Site, siteOf } from "./charge-balance.ts";
import type { DairyKind } from "./dairy-kind-table.ts";
import { DAIRIES, type Dairy } from "./dairy-table.ts";

/**
 * Whole milk as five kinds of titratable site: phosphate and citrate of the serum, the colloidal
 * calcium phosphate that dissolves about pH 5, the acid groups of the protein. mol per litre.
 * Effective pKa, fitted by us to: maximum buffer index 27.7 mmol/L/pH at pH 5.05 to 5.1, titratable
 * acidity 0.15 % as lactic acid of fresh milk, and the acid demand curve of the reference notes.
 */
const MILK_SITES = [
  { pKa: 7.2, molar: 0.016 },
  { pKa: 6.2, molar: 0.015 },
  { pKa: 5.15, molar: 0.036 },
  { pKa: 4.15, molar: 0.0196 },
  { pKa: 3.1, molar: 0.0145 },
];

/** A dairy as the charge balance sees it, per litre of it. */
export interface MilkBuffer {
  readonly sites: readonly Site[];
  /** Strong cation that holds it at its own pH, mol/L. */
  readonly cation: number;
}

function bufferAt(dairy: Dairy): MilkBuffer {
  const sites = MILK_SITES.map(({ pKa, molar }) => siteOf(pKa, molar * dairy.uptake));
  // What the sites lack at the milk's own pH, its minerals bring.
  return { sites, cation: -chargeAt(chargesOf({ acids: {}, cation: 0, sites }), dairy.pH) };
}

const BUFFERS: Readonly<Record<DairyKind, MilkBuffer>> = {
  whole: bufferAt(DAIRIES.whole),
  skim: bufferAt(DAIRIES.skim),
  cream: bufferAt(DAIRIES.cream),
  goat: bufferAt(DAIRIES.goat),
  soy: bufferAt(DAIRIES.soy),
  oat: bufferAt(DAIRIES.oat),
  almond: bufferAt(DAIRIES.almond),
  coconut: bufferAt(DAIRIES.coconut),
};

/**
 * What a litre of a dairy or plant milk is made of, and what is known of its curdling.
 *
 * @param kind - which milk
 * @returns density in kg/L, masses in g per litre, onset pH, allergen
 * @source dairy-table.ts
 * @limits typical values: milks differ by a tenth in fat and protein, plant drinks by half
 * @example
 * dairyOf("whole").lactose // => 48.4
 */
export const dairyOf = (kind: DairyKind): Dairy => DAIRIES[kind];

/** The titratable sites of a dairy, and the cation that goes with them; mol per litre of it. */
export const milkBufferOf = (kind: DairyKind): MilkBuffer => BUFFERS[kind];

/**
 * Strong acid that brings a milk from its own pH down to another.
 *
 * @param kind - which milk
 * @param pH - 2 to 8; above the milk's own it is the lye, below 0
 * @returns mmol of H+ per litre of milk
 * @throws RangeError when the pH is outside 2 to 8
 * @source fitted to a published buffer index maximum (27.7 mmol/L/pH for whole cow's milk: Lesson 24,
 * Buffering capacity and buffering index, dairy chemistry course); no full titration could be opened
 * @limits about 20 %: milks differ; within 8 % of the reference curve between pH 6.0 and 4.2, 19 % under
 * one published titration of yoghurt (its milk is often fortified)
 * @example
 * acidDemand("whole", 4.6) // => 46 ± 1
 * @public checked against published titration points; no screen asks for it yet
 */
export function acidDemand(kind: DairyKind, pH: number): number {
  requireWithin(pH, 2, 8, "a pH of milk");
  const { sites, cation } = milkBufferOf(kind);
  return 1000 * chargeAt(chargesOf({ acids: {}, cation, sites }), pH);
}
