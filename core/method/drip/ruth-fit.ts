import { type FiltrationLaw, type Resistance, unitTimes } from "./filtration-law.ts";

/** A share collected, and when. */
export interface SharePoint {
  /** In any unit of time since the drip began. */
  readonly time: number;
  /** Share of all that will come through, above 0 and below 1. */
  readonly share: number;
}

interface Sums {
  mm: number;
  cc: number;
  mc: number;
  mt: number;
  ct: number;
}

/** Sums of the plot of t/f: with the head kept up it is Ruth's straight line. */
function sumsOf(points: readonly SharePoint[], law: FiltrationLaw): Sums {
  const sums: Sums = { mm: 0, cc: 0, mc: 0, mt: 0, ct: 0 };
  for (const { time, share } of points) {
    const times = unitTimes(law, share);
    const medium = times.medium / share;
    const cake = times.cake / share;
    const slowness = time / share;
    sums.mm += medium * medium;
    sums.cc += cake * cake;
    sums.mc += medium * cake;
    sums.mt += medium * slowness;
    sums.ct += cake * slowness;
  }
  return sums;
}

/**
 * Resistance of filter and bed that fits best, neither below zero: least squares of time per
 * volume, the classical plot.
 *
 * @param points - one or more; one alone gives a bare filter or a bare bed
 * @param law - of the vessel
 * @throws RangeError without a point
 * @source t/V = (Kp/2) V + B, Geankoplis, Transport Processes, 14.2: `medium` is B and `cake` is Kp
 * where the share is a volume and the head is kept up
 * @example
 * fitResistance([{ time: 3, share: 0.2 }, { time: 8, share: 0.4 }], filtrationLaw(0, 1)).medium // => 10 ± 0.000001
 */
export function fitResistance(points: readonly SharePoint[], law: FiltrationLaw): Resistance {
  if (points.length === 0) throw new RangeError("a fit must have at least one point, got none");
  const { mm, cc, mc, mt, ct } = sumsOf(points, law);
  const spread = mm * cc - mc * mc;
  const medium = (mt * cc - ct * mc) / spread;
  const cake = (ct * mm - mt * mc) / spread;
  if (spread > 1e-12 * mm * cc && medium >= 0 && cake >= 0) return { medium, cake };
  const byMedium = (mt * mt) / mm;
  const byCake = (ct * ct) / cc;
  // A single point is explained by either: then it is the filter.
  return byMedium > byCake * (1 - 1e-9)
    ? { medium: mt / mm, cake: 0 }
    : { medium: 0, cake: ct / cc };
}
