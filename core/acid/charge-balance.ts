import { ACID_NAMES, type AcidMasses, type AcidName } from "../quantity/acid-name.ts";
import { requireWithin } from "../quantity/require-within.ts";
import { rootBetween } from "../quantity/solve.ts";
import { DISSOCIATION } from "./dissociation-table.ts";

/** Davies equation, water at 25 degrees C: log10 of an ion's activity is -z^2 A (√I/(1+√I) - b I). */
const DAVIES_A = 0.509;
const DAVIES_B = 0.3;
/** Above this the Davies curve turns up again and means nothing, mol/L. */
const MOST_IONIC = 0.5;
/** Ion product of water at 25 degrees C. */
const WATER = 1.008e-14;
/** Rise of a pKa over the whole way to pure ethanol, by the slope seen at 12 % vol: 0.0135 per % vol. */
const ETHANOL_RISE = 1.35;
/** Strength from which on the rise is held: far past what the slope was seen at. */
const MOST_STRENGTH = 0.5;
/** pH of strongest acid and strongest lye between which every drink lies. */
const SOUREST = -1;
const SOAPIEST = 15;

/** An acid given by its constants rather than by its name. */
export interface Dissociating {
  /** Thermodynamic pKa, first proton first. */
  readonly pKa: readonly number[];
  /** mol/L. */
  readonly molar: number;
}

/** A group that binds one proton, with an effective pKa: no activity correction is made for it. */
export interface Site {
  /** 10^-pKa. */
  readonly constant: number;
  /** mol/L. */
  readonly molar: number;
}

/** What sets the pH of a liquid. */
export interface Solution {
  /** mol/L of each. */
  readonly acids: AcidMasses;
  /** Net strong cation (potassium and sodium less chloride), mol/L; below 0 a strong acid. */
  readonly cation: number;
  /** v/v, 0 to 1; 0 if left out. */
  readonly strength?: number;
  /** Titratable sites of protein and milk salts. */
  readonly sites?: readonly Site[];
  /** By how much the sites are thinned, 0 to 1; 1 if left out. */
  readonly siteShare?: number;
  /** Acids the core has no name for. */
  readonly others?: readonly Dissociating[];
}

interface Group {
  readonly constants: readonly number[];
  readonly molar: number;
}

/** A solution made ready, so that its charge can be asked for at many pH. */
export interface Charges {
  readonly acids: readonly Group[];
  readonly sites: readonly Site[];
  readonly siteShare: number;
  readonly cation: number;
  /** What alcohol multiplies every constant by, 0 to 1. */
  readonly loosening: number;
}

const constantsOf = (pKa: readonly number[]): readonly number[] => pKa.map((p) => 10 ** -p);

const NAMED: Readonly<Record<AcidName, readonly number[]>> = {
  citric: constantsOf(DISSOCIATION.citric.pKa),
  malic: constantsOf(DISSOCIATION.malic.pKa),
  tartaric: constantsOf(DISSOCIATION.tartaric.pKa),
  lactic: constantsOf(DISSOCIATION.lactic.pKa),
  acetic: constantsOf(DISSOCIATION.acetic.pKa),
  phosphoric: constantsOf(DISSOCIATION.phosphoric.pKa),
};

function groupOf(constants: readonly number[], molar: number): Group {
  requireWithin(molar, 0, 100, "an acid in mol/L");
  return { constants, molar };
}

/**
 * A titratable site.
 *
 * @param pKa - effective, as seen in the liquid it belongs to
 * @param molar - mol/L
 * @throws RangeError when the amount is negative or not a number
 */
export function siteOf(pKa: number, molar: number): Site {
  requireWithin(molar, 0, 100, "a titratable site in mol/L");
  return { constant: 10 ** -pKa, molar };
}

/**
 * Rise of an acid's pKa with alcohol.
 *
 * @param strength - v/v, 0 to 1
 * @returns added to every pKa
 * @source Prenesti et al., Scientific World Journal 2012, 249041, table 4: 0.16 to 0.17 per 12 % vol
 * for lactic and succinic acid at 25 degrees C, that is 0.0135 per % vol
 * @limits measured at 12 % vol; a straight line beyond it is our extrapolation, unchecked above 20 %
 * vol and held from 50 % vol on
 * @example
 * alcoholRise(0.12) // => 0.162 ± 0.000001
 */
export const alcoholRise = (strength: number): number =>
  ETHANOL_RISE * Math.min(strength, MOST_STRENGTH);

/**
 * Makes a solution ready to be asked for its charge.
 *
 * @param solution - acids and cation in mol/L, strength v/v
 * @throws RangeError when an amount is negative or not a number, or a strength is outside 0 to 1
 */
export function chargesOf(solution: Solution): Charges {
  const { acids, cation, strength = 0, sites = [], siteShare = 1, others = [] } = solution;
  requireWithin(cation, -10, 10, "a net strong cation in mol/L");
  requireWithin(strength, 0, 1, "a strength (0 to 1)");
  requireWithin(siteShare, 0, 1, "a share of titratable sites (0 to 1)");
  const groups = others.map(({ pKa, molar }) => groupOf(constantsOf(pKa), molar));
  for (const name of ACID_NAMES) {
    const molar = acids[name] ?? 0;
    if (molar !== 0) groups.push(groupOf(NAMED[name], molar));
  }
  return { acids: groups, sites, siteShare, cation, loosening: 10 ** -alcoholRise(strength) };
}

/** γ of a single charge, inverted: the factor by which its concentration exceeds its activity. */
function crowding(ionic: number): number {
  const root = Math.sqrt(ionic);
  return 10 ** (DAVIES_A * (root / (1 + root) - DAVIES_B * ionic));
}

interface Balance {
  /** Net charge, mol/L. */
  readonly charge: number;
  /** Ionic strength that this charge makes, mol/L. */
  readonly ionic: number;
}

/**
 * Negative charge and sum of squared charges of one acid, per mol. `hydrogen` is the activity that
 * stands against the constants: alcohol's loosening is already taken out of it.
 */
function anionsOf(constants: readonly number[], hydrogen: number, crowd: number): [number, number] {
  let term = 1;
  let all = 1;
  let charge = 0;
  let squares = 0;
  // The j-th proton leaves a charge of j behind: its constant grows by γ1^-(2j-1).
  let grows = crowd / hydrogen;
  for (let j = 1; j <= constants.length; j += 1) {
    term *= (constants[j - 1] ?? 0) * grows;
    grows *= crowd * crowd;
    all += term;
    charge += j * term;
    squares += j * j * term;
  }
  return [charge / all, squares / all];
}

function balanceAt(charges: Charges, hydrogen: number, ionic: number): Balance {
  const crowd = crowding(ionic);
  const protons = hydrogen * crowd;
  const hydroxide = (WATER / hydrogen) * crowd;
  let negative = hydroxide;
  let squares = Math.abs(charges.cation) + protons + hydroxide;
  const against = hydrogen / charges.loosening;
  for (const { constants, molar } of charges.acids) {
    const [charge, squared] = anionsOf(constants, against, crowd);
    negative += molar * charge;
    squares += molar * squared;
  }
  for (const { constant, molar } of charges.sites) {
    const charge = (charges.siteShare * molar * constant) / (constant + against);
    negative += charge;
    squares += charge;
  }
  return {
    charge: charges.cation + protons - negative,
    ionic: Math.min(squares / 2, MOST_IONIC),
  };
}

/**
 * Net charge a solution would have at a pH it need not have; 0 at its own. Positive below its own
 * pH, negative above it.
 *
 * @param charges - from `chargesOf`
 * @param pH - on the activity scale that a meter reads
 * @returns mol/L
 */
export function chargeAt(charges: Charges, pH: number): number {
  const hydrogen = 10 ** -pH;
  let ionic = 0.05;
  let found = balanceAt(charges, hydrogen, ionic);
  // The ions make the ionic strength and the ionic strength makes the ions: a few rounds agree.
  for (let turn = 0; turn < 40 && Math.abs(found.ionic - ionic) > 1e-7; turn += 1) {
    ionic = found.ionic;
    found = balanceAt(charges, hydrogen, ionic);
  }
  return found.charge;
}

/** Charge spans ten powers of ten over the scale: folded, it is nearly straight and quick to solve. */
const folded = (charge: number): number => Math.asinh(charge / 1e-4);

/**
 * pH of a solution by charge balance, with activities by the Davies equation.
 *
 * @param solution - acids and cation in mol/L, strength v/v
 * @returns pH at 25 degrees C
 * @throws RangeError when an amount is negative or not a number, or a strength is outside 0 to 1
 * @source Davies equation with A 0.509, b 0.3, I at most 0.5 mol/L; constants in dissociation-table.ts
 * @limits within 0.02 of the NBS primary buffers; reads 0.12 high on average (at most 0.19) against the
 * McIlvaine table, mostly for want of sodium ion pairs; 25 degrees C only; alcohol as `alcoholRise`
 * @example
 * pHOf({ acids: { citric: 0.1 }, cation: 0 }) // => 2.08 ± 0.01
 */
export function pHOf(solution: Solution): number {
  const charges = chargesOf(solution);
  return pHOfCharges(charges);
}

/** pH at which charges made ready cancel. */
export const pHOfCharges = (charges: Charges): number =>
  rootBetween((pH) => folded(chargeAt(charges, pH)), SOUREST, SOAPIEST, 1e-7);
