/** Median and quartiles of some figures, in their unit: an odd batch moves none of them far. */
export interface Quartiles {
  readonly median: number;
  /** The lower quartile: a quarter of the figures lie below. */
  readonly low: number;
  /** The upper quartile: a quarter of the figures lie above. */
  readonly high: number;
}

/** A share of the way through sorted figures, between two of them where it falls there. */
function quantile(sorted: readonly number[], share: number): number {
  const place = share * (sorted.length - 1);
  const below = sorted[Math.floor(place)] ?? 0;
  const above = sorted[Math.ceil(place)] ?? below;
  return below + (above - below) * (place - Math.floor(place));
}

/**
 * Median and quartiles of some figures.
 *
 * @param figures - one or more
 * @source quantiles with linear interpolation between order statistics: Hyndman and Fan, Sample
 *   quantiles in statistical packages, The American Statistician 50 (1996), type 7 (from memory)
 * @example
 * quartilesOf([4, 1, 3, 2]).median // => 2.5
 */
export function quartilesOf(figures: readonly number[]): Quartiles {
  const sorted = figures.toSorted((a, b) => a - b);
  return {
    median: quantile(sorted, 0.5),
    low: quantile(sorted, 0.25),
    high: quantile(sorted, 0.75),
  };
}
