/**
 * Share of a normal distribution that lies below z.
 *
 * @param z - standard deviations from the mean
 * @source Abramowitz & Stegun, Handbook of Mathematical Functions, 26.2.17 (from memory)
 * @limits error below 1e-7
 * @example
 * normalBelow(1.2815516) // => 0.9 ± 0.0000001
 */
export function normalBelow(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const series =
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  const tail = (series * Math.exp((-z * z) / 2)) / Math.sqrt(2 * Math.PI);
  return z > 0 ? 1 - tail : tail;
}
