import { beyondT } from "./student-t.ts";

/** Two figures of one batch. */
export interface Pair {
  readonly x: number;
  readonly y: number;
}

/** How closely two figures rise and fall together over some batches. */
export interface RankCorrelation {
  /** −1 to 1. */
  readonly rho: number;
  /** How often figures that have nothing to do with each other would show as much. */
  readonly p: number;
  readonly n: number;
}

/** Places of figures from the least, equal ones sharing the middle of theirs. */
export function ranksOf(figures: readonly number[]): readonly number[] {
  const sorted = figures.toSorted((a, b) => a - b);
  return figures.map((one) => (sorted.indexOf(one) + sorted.lastIndexOf(one)) / 2 + 1);
}

function pearson(x: readonly number[], y: readonly number[]): number | undefined {
  const middle = (x.length + 1) / 2;
  let [xx, yy, xy] = [0, 0, 0];
  for (const [at, rank] of x.entries()) {
    const [dx, dy] = [rank - middle, (y[at] ?? middle) - middle];
    xx += dx * dx;
    yy += dy * dy;
    xy += dx * dy;
  }
  if (!(xx > 0) || !(yy > 0)) return undefined;
  return Math.min(1, Math.max(-1, xy / Math.sqrt(xx * yy)));
}

/**
 * Spearman's rank correlation.
 *
 * @param pairs - of finite figures
 * @returns nothing below three pairs, or where one of the figures never changes
 * @source Pearson's correlation of the ranks, equal figures sharing theirs; p from Student's t with
 *   n − 2 degrees of freedom, t = ρ √((n − 2) / (1 − ρ²)) (textbook, from memory)
 * @limits p is an approximation, good from about ten pairs; many equal figures make it rougher
 */
export function rankCorrelation(pairs: readonly Pair[]): RankCorrelation | undefined {
  const n = pairs.length;
  if (n < 3) return undefined;
  const rho = pearson(ranksOf(pairs.map(({ x }) => x)), ranksOf(pairs.map(({ y }) => y)));
  if (rho === undefined) return undefined;
  const t = rho * Math.sqrt((n - 2) / Math.max(1 - rho * rho, Number.EPSILON));
  return { rho, p: beyondT(t, n - 2), n };
}

/**
 * Corrects for having looked at many things: the more were looked at, the likelier one of them shows
 * something by chance.
 *
 * @param ps - one for each thing looked at
 * @returns the same, in the same order, each at most 1: below 0.05, fewer than 1 in 20 such lists
 *   would hold even one that shows as much by chance
 * @source Holm, A simple sequentially rejective multiple test procedure, Scandinavian Journal of
 *   Statistics 6 (1979) 65 (from memory): it holds however the things hang together
 */
export function holm(ps: readonly number[]): readonly number[] {
  const order = ps.map((p, at) => ({ p, at })).toSorted((a, b) => a.p - b.p);
  const corrected: number[] = ps.map(() => 1);
  let most = 0;
  for (const [rank, { p, at }] of order.entries()) {
    most = Math.max(most, Math.min(1, p * (ps.length - rank)));
    corrected[at] = most;
  }
  return corrected;
}
