import type { AcidMasses } from "../quantity/acid-name.ts";
import { requireWithin } from "../quantity/require-within.ts";
import { type Charges, chargesOf, pHOfCharges } from "./charge-balance.ts";
import type { DairyKind } from "./dairy-kind-table.ts";
import { dairyOf, milkBufferOf } from "./milk.ts";
import { molarOf } from "./molar.ts";

/** Far above any vessel, ml. */
const MOST_VOLUME = 1e8;
/**
 * Half-width of the pH band. Milk's acid uptake is trusted to a fifth, which is 0.26 pH where milk
 * buffers most; the juice adds its share. Judgement.
 */
const DOUBT = 0.3;
/** The same where the milk's acid uptake is a guess for want of data. Judgement. */
const DOUBT_WITHOUT_DATA = 0.5;
/** Alcohol's effect on acids was seen at 12 % vol; the doubt grows from here on, v/v. Judgement. */
export const ALCOHOL_DATA_END = 0.2;
const DOUBT_PER_STRENGTH = 1;

/** The whole punch that meets the dairy. */
export interface Punch {
  /** ml. */
  readonly volume: number;
  /** Grams in the whole punch. */
  readonly acids: AcidMasses;
  /** Net strong cation in the whole punch, mol. */
  readonly cation: number;
  /** v/v, 0 to 1. */
  readonly strength: number;
}

/** A punch and the dairy it meets. */
export interface Mixing {
  readonly punch: Punch;
  readonly dairy: DairyKind;
  /** ml. */
  readonly dairyVolume: number;
}

/** pH of a mix as far as it can be known. */
export interface PhBand {
  readonly pH: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Stops at a mix that cannot be.
 *
 * @throws RangeError when an amount is negative or not a number, a strength is outside 0 to 1, or both
 * volumes are 0
 */
export function expectMixing({ punch, dairyVolume }: Mixing): void {
  requireWithin(punch.volume, 0, MOST_VOLUME, "a punch in ml");
  requireWithin(dairyVolume, 0, MOST_VOLUME, "a dairy volume in ml");
  requireWithin(punch.volume + dairyVolume, 1e-3, MOST_VOLUME, "punch and dairy together, in ml");
  requireWithin(punch.cation, 0, MOST_VOLUME, "a net strong cation in mol");
  requireWithin(punch.strength, 0, 1, "a strength of punch (0 to 1)");
}

/** Strength of punch and dairy together, v/v; contraction, under 1 % here, is left out. */
export const mixStrength = ({ punch, dairyVolume }: Mixing): number =>
  (punch.strength * punch.volume) / (punch.volume + dairyVolume);

/** Punch and dairy as the charge balance sees them, per litre of both together. */
export function chargesOfMix(mixing: Mixing): Charges {
  const { punch, dairy, dairyVolume } = mixing;
  const litres = (punch.volume + dairyVolume) / 1000;
  const share = dairyVolume / 1000 / litres;
  const buffer = milkBufferOf(dairy);
  return chargesOf({
    acids: molarOf(punch.acids, litres),
    cation: punch.cation / litres + buffer.cation * share,
    strength: mixStrength(mixing),
    sites: buffer.sites,
    siteShare: share,
  });
}

/**
 * Half-width of the pH band of a mix.
 *
 * @returns pH, 0.3 or more
 * @source judgement: see the constants
 */
export function doubtOf(mixing: Mixing): number {
  const doubt = dairyOf(mixing.dairy).known ? DOUBT : DOUBT_WITHOUT_DATA;
  return doubt + DOUBT_PER_STRENGTH * Math.max(0, mixStrength(mixing) - ALCOHOL_DATA_END);
}

/**
 * pH of punch and dairy together, as a band.
 *
 * @param mixing - the whole punch, which dairy, how much of it in ml
 * @returns the likeliest pH with its band; show the band, never two decimals
 * @throws RangeError when an amount is negative or not a number, or both volumes are 0
 * @source charge balance (charge-balance.ts) with milk as titratable sites (milk.ts)
 * @limits 0.3 either way with cow's milk up to 20 % vol, 0.5 where the milk's uptake is a guess, and
 * 0.01 more for each % vol above 20: a judgement, as no measured wash could be opened; 25 degrees C
 * @example
 * mixPh({ punch: { volume: 800, acids: { citric: 3.84 }, cation: 0.00272, strength: 0 }, dairy: "whole", dairyVolume: 200 }).pH // => 3.5 ± 0.05
 */
export function mixPh(mixing: Mixing): PhBand {
  expectMixing(mixing);
  const pH = pHOfCharges(chargesOfMix(mixing));
  const doubt = doubtOf(mixing);
  return { pH, low: pH - doubt, high: pH + doubt };
}
