import type { DripReading } from "./drip-readings.ts";
import {
  type FiltrationLaw,
  type Resistance,
  type UnitTimes,
  unitTimes,
} from "./filtration-law.ts";
import { type LikelyLaw, lawsOf, type VesselShape } from "./vessel-shape.ts";

/** What should come through, ml: the likely amount and its 80 % range. */
export interface ExpectedTotal {
  readonly expected: number;
  readonly low: number;
  readonly high: number;
}

/** One way it may be going, with how well it explains what was read. */
export interface DripCase {
  readonly law: FiltrationLaw;
  readonly clogs: boolean;
  /** All that will come through, ml. */
  readonly total: number;
  /** Filter against bed; their scale is `lnScale`. */
  readonly resistance: Resistance;
  /** ln of ms per unit time, and its standard deviation. */
  readonly lnScale: number;
  readonly sd: number;
  /** Adds up to 1 over all cases. */
  readonly weight: number;
}

/** A reading under one law and total: unit times, and ln of its time. */
interface Seen {
  readonly times: UnitTimes;
  readonly lnTime: number;
}

/**
 * Scatter of a reading in a jug: 3 % (common practice, no source), widened to 3.2 % so that the
 * 80 % ranges hold 80 % of simulated drips: `tests/bench/drip-coverage.ts`.
 */
export const READING_SCATTER = 0.032;
/** Times and rates near the empty end say little: a reading counts as at most this share. */
export const FULL_SHARE = 0.985;
/** Cases this much less likely than the best are left out. */
const NEGLIGIBLE = 1e-4;
/** From p10 to p90 of a normal distribution, in standard deviations. */
const EIGHTY = 2.5631;

/** Filter against a bed of 1: 0.02 to 3, evenly in its logarithm, and a filter without a bed. */
const FINE_MIXES: readonly (Resistance & { readonly weight: number })[] = [
  ...Array.from({ length: 13 }, (_, step) => ({
    medium: 0.02 * 150 ** (step / 12),
    cake: 1,
    weight: 1 / 13.5,
  })),
  { medium: 1, cake: 0, weight: 0.5 / 13.5 },
];
const COARSE_MIXES = [0.05, 0.25, 1, 3].map((medium) => ({ medium, cake: 1, weight: 1 / 4 }));

/** Totals are tried at these standard deviations from the expected one. */
const FINE_PLACES = [-2, -1.5, -1, -0.5, 0, 0.5, 1, 1.5, 2];
const COARSE_PLACES = [-1.2, 0, 1.2];

/** How far off the expected total may be, as a share: standard deviation, 0.5 to 30 %. */
export function totalScatter({ expected, low, high }: ExpectedTotal): number {
  return Math.min(0.3, Math.max(0.005, (high - low) / expected / EIGHTY));
}

interface Total {
  readonly ml: number;
  readonly weight: number;
}

function totalsAt(places: readonly number[], expected: ExpectedTotal, collected: number): Total[] {
  const scatter = totalScatter(expected);
  // More in the jug than the plan thought possible: the readings are believed, not the plan.
  const centre = Math.max(expected.expected, collected);
  const bell = (place: number): number => Math.exp((-place * place) / 2);
  const sum = places.reduce((so, place) => so + bell(place), 0);
  return places.map((place) => ({
    ml: centre * Math.exp(place * scatter),
    weight: bell(place) / sum,
  }));
}

const unit = ({ medium, cake }: Resistance, times: UnitTimes): number =>
  medium * times.medium + cake * times.cake;

/** A case before it is weighed: ln of its weight but for the misfit, and the misfit. */
interface Unweighed extends DripCase {
  readonly misfit: number;
}

/** The scale that fits best, and how badly: least squares on the relative error of volume. */
function explain(seen: readonly Seen[], mix: Resistance) {
  let sum = 0;
  let first = 0;
  let second = 0;
  for (const { times, lnTime } of seen) {
    const time = unit(mix, times);
    // A slip of 1 % in the volume looks like one of `slip` % in the time.
    const slip = (mix.medium * times.mediumRise + mix.cake * times.cakeRise) / time;
    const weight = 1 / (slip * slip);
    const scale = lnTime - Math.log(time);
    sum += weight;
    first += weight * scale;
    second += weight * scale * scale;
  }
  const lnScale = first / sum;
  const misfit = Math.max(0, second - first * lnScale) / READING_SCATTER ** 2;
  return { lnScale, sd: READING_SCATTER / Math.sqrt(sum), misfit };
}

function seenUnder(readings: readonly DripReading[], law: FiltrationLaw, total: number): Seen[] {
  return readings.map(({ atMs, ml }) => ({
    times: unitTimes(law, Math.min(ml / total, FULL_SHARE)),
    lnTime: Math.log(atMs),
  }));
}

/** How badly readings above the total speak against it. */
function overfull(readings: readonly DripReading[], total: number): number {
  const over = readings.map(({ ml }) => Math.max(0, Math.log(ml / total / FULL_SHARE)));
  return over.reduce((sum, by) => sum + (by / READING_SCATTER) ** 2, 0);
}

function casesUnder(
  { law, weight, clogs }: LikelyLaw,
  readings: readonly DripReading[],
  total: Total,
): Unweighed[] {
  const seen = seenUnder(readings, law, total.ml);
  const over = overfull(readings, total.ml);
  const lnBefore = Math.log(weight * total.weight);
  return (clogs ? COARSE_MIXES : FINE_MIXES).map((mix) => {
    const { lnScale, sd, misfit } = explain(seen, mix);
    // Times `sd`: a scale that the readings pin down closely was less likely to be hit.
    return {
      law,
      clogs,
      total: total.ml,
      resistance: mix,
      lnScale,
      sd,
      weight: lnBefore + Math.log(mix.weight * sd),
      misfit: misfit + over,
    };
  });
}

/**
 * Weights that add up to 1, without the negligible. Where even the best case fits worse than the
 * scatter of a jug explains, the scatter is taken to be larger (Birge's ratio, from memory).
 */
function weighed(cases: readonly Unweighed[], readings: number): readonly DripCase[] {
  const least = cases.reduce((low, { misfit }) => Math.min(low, misfit), Number.POSITIVE_INFINITY);
  const ratio = Math.max(1, least / Math.max(1, readings - 2));
  const lnOf = ({ weight, misfit }: Unweighed): number => weight - misfit / ratio / 2;
  const best = cases.reduce((most, one) => Math.max(most, lnOf(one)), Number.NEGATIVE_INFINITY);
  const kept = cases.filter((one) => lnOf(one) > best + Math.log(NEGLIGIBLE));
  const sum = kept.reduce((so, one) => so + Math.exp(lnOf(one) - best), 0);
  return kept.map((one) => ({
    ...one,
    sd: one.sd * Math.sqrt(ratio),
    weight: Math.exp(lnOf(one) - best) / sum,
  }));
}

/**
 * Ways the drip may be going, weighed by how well they explain the readings and how likely they
 * were before: a grid over head, packing, clogging, filter against bed, and the total; the scale of
 * time by least squares on the relative error of the readings.
 *
 * @param readings - one or more, in order of time, never decreasing, above 0
 * @param expected - what should come through
 * @param shape - of the vessel above the filter
 * @source Bayes' rule on the filtration law; grid, noise and accuracy as in the project's reference
 * notes (filtration_eta_accuracy.json)
 */
export function dripCases(
  readings: readonly DripReading[],
  expected: ExpectedTotal,
  shape: VesselShape,
): readonly DripCase[] {
  const collected = readings.at(-1)?.ml ?? 0;
  const fine = totalsAt(FINE_PLACES, expected, collected);
  const coarse = totalsAt(COARSE_PLACES, expected, collected);
  const cases = lawsOf(shape).flatMap((likely) =>
    (likely.clogs ? coarse : fine).flatMap((total) => casesUnder(likely, readings, total)),
  );
  return weighed(cases, readings.length);
}

const lnTimeAt = ({ lnScale, resistance }: DripCase, times: UnitTimes): number =>
  lnScale + Math.log(unit(resistance, times));

/**
 * ln of the time at which a share has come through, ms since the drip began.
 *
 * @param drip - one case
 * @param share - of its total, above 0
 */
export const lnTimeOf = (drip: DripCase, share: number): number =>
  lnTimeAt(drip, unitTimes(drip.law, share));

/**
 * The same of many cases, in their order; cases of one law share its unit times.
 *
 * @param cases - any
 * @param share - of each one's total, above 0
 */
export function lnTimesOf(cases: readonly DripCase[], share: number): readonly number[] {
  const known = new Map<FiltrationLaw, UnitTimes>();
  return cases.map((drip) => {
    const times = known.get(drip.law) ?? unitTimes(drip.law, share);
    known.set(drip.law, times);
    return lnTimeAt(drip, times);
  });
}
