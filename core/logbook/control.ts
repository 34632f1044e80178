import { quartilesOf } from "./quartiles.ts";

/** The usual range of single figures, one after another. */
export interface Control {
  readonly mean: number;
  /** Mean difference of one figure to the next. */
  readonly movingRange: number;
  /** Where a figure would lie only now and then if nothing had changed. */
  readonly low: number;
  readonly high: number;
  /** Places of the figures outside. */
  readonly outside: readonly number[];
  /** The same from medians, which an odd figure does not widen. */
  readonly robust: { readonly middle: number; readonly low: number; readonly high: number };
  /** An odd figure has widened the limits: the robust ones are narrower by a quarter or more. */
  readonly widened: boolean;
}

/** Fewer figures give no limits worth drawing: judgement, common practice is 8 to 20. */
export const FEWEST_IN_CONTROL = 8;
/** 3 / d2, d2 = 1.128 for ranges of two. */
const FROM_MEAN = 2.66;
/** 3 / 0.954, the median of such ranges in standard deviations (Wheeler, from memory). */
const FROM_MEDIAN = 3.145;
const WIDER_BY = 0.75;

/**
 * Limits of an individuals and moving range chart.
 *
 * @param figures - in the order of their batches
 * @returns nothing below eight
 * @source mean ± 2.66 × mean moving range: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2,
 *   after Shewhart; median form: Wheeler (from memory)
 * @limits figures that follow a trend or each other lie outside more often than the limits promise
 */
export function controlOf(figures: readonly number[]): Control | undefined {
  if (figures.length < FEWEST_IN_CONTROL) return undefined;
  const mean = figures.reduce((sum, one) => sum + one, 0) / figures.length;
  const ranges = figures.slice(1).map((one, at) => Math.abs(one - (figures[at] ?? one)));
  const movingRange = ranges.reduce((sum, one) => sum + one, 0) / ranges.length;
  const reach = FROM_MEAN * movingRange;
  const [low, high] = [mean - reach, mean + reach];
  const middle = quartilesOf(figures).median;
  const robustReach = FROM_MEDIAN * quartilesOf(ranges).median;
  return {
    mean,
    movingRange,
    low,
    high,
    outside: figures.flatMap((one, at) => (one < low || one > high ? [at] : [])),
    robust: { middle, low: middle - robustReach, high: middle + robustReach },
    widened: robustReach < WIDER_BY * reach,
  };
}
