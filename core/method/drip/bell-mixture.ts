import { rootBetween } from "../../quantity/solve.ts";
import { normalBelow } from "./normal-below.ts";

/** One bell curve of several. */
export interface Bell {
  readonly mean: number;
  readonly sd: number;
  readonly weight: number;
}

/** A range that holds 80 % of what may be, and its middle. */
export interface Spread {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
}

/** Where a share of the mixture lies below. */
function quantile(bells: readonly Bell[], share: number, low: number, high: number): number {
  const total = bells.reduce((sum, { weight }) => sum + weight, 0);
  const below = (x: number): number =>
    bells.reduce((sum, { mean, sd, weight }) => sum + weight * normalBelow((x - mean) / sd), 0) /
      total -
    share;
  if (!(below(low) < 0)) return low;
  if (!(below(high) > 0)) return high;
  return rootBetween(below, low, high, 1e-6 * (high - low));
}

/** Fewer bells are weighed one by one: each weighing takes an exponential, and there are a hundred. */
const MANY = 200;
/** Means this close, in widths, count as near. */
const NEAR = 1;

/** Near neighbours of about the same width made one, with their mean and variance: the whole keeps its shape. */
function gathered(bells: readonly Bell[]): readonly Bell[] {
  if (bells.length <= MANY) return bells;
  const from = bells[0]?.mean ?? 0;
  const groups = new Map<string, { weight: number; first: number; second: number }>();
  for (const { mean, sd, weight } of bells) {
    const off = mean - from;
    // Widths within a quarter of one another.
    const width = Math.round(3 * Math.log2(sd));
    const key = `${width} ${Math.floor(off / (NEAR * 2 ** (width / 3)))}`;
    const group = groups.get(key) ?? { weight: 0, first: 0, second: 0 };
    groups.set(key, group);
    group.weight += weight;
    group.first += weight * off;
    group.second += weight * (sd * sd + off * off);
  }
  return [...groups.values()].map(({ weight, first, second }) => {
    const off = first / weight;
    return { mean: from + off, sd: Math.sqrt(second / weight - off * off), weight };
  });
}

function spreadOf(bells: readonly Bell[]): Spread {
  if (bells.length === 0) throw new RangeError("a mixture must have at least one part, got none");
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const { mean, sd } of bells) {
    low = Math.min(low, mean - 6 * sd);
    high = Math.max(high, mean + 6 * sd);
  }
  const p50 = quantile(bells, 0.5, low, high);
  return { p10: quantile(bells, 0.1, low, p50), p50, p90: quantile(bells, 0.9, p50, high) };
}

/**
 * The middle and the 80 % range of a mixture of bell curves of a logarithm.
 *
 * @param bells - one or more, of ln x, with sd and weight above 0
 * @returns x, not its logarithm
 * @throws RangeError without a bell
 * @limits where there are more than 200, near ones of about the same width are weighed as one:
 *   within 0.05 % of x where their widths are those of a drip, 0.02 to 0.16
 * @example
 * spreadOfLogs([{ mean: 0, sd: 0.5, weight: 1 }]).p90 // => 1.89795 ± 0.0001
 */
export function spreadOfLogs(bells: readonly Bell[]): Spread {
  const { p10, p50, p90 } = spreadOf(gathered(bells));
  return { p10: Math.exp(p10), p50: Math.exp(p50), p90: Math.exp(p90) };
}
