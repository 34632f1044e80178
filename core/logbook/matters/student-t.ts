import { requireWithin } from "../../quantity/require-within.ts";

/**
 * How often Student's t lies as far out as this, on either side.
 *
 * @param t - any number
 * @param freedom - whole degrees of freedom, from 1
 * @throws RangeError for other degrees of freedom
 * @source finite series for whole degrees of freedom: Abramowitz and Stegun, Handbook of Mathematical
 *   Functions, 26.7.3 and 26.7.4 (from memory)
 * @example
 * beyondT(2.228139, 10) // => 0.05 ± 0.000001
 */
export function beyondT(t: number, freedom: number): number {
  requireWithin(freedom, 1, 10_000, "the degrees of freedom");
  if (!Number.isInteger(freedom)) throw new RangeError(`freedom must be whole, got ${freedom}`);
  const angle = Math.atan2(Math.abs(t), Math.sqrt(freedom));
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  const odd = freedom % 2 === 1;
  // cos, cos^3 × 2/3, … for odd degrees of freedom; 1, cos^2 × 1/2, … for even ones.
  let term = odd ? cos : 1;
  let sum = odd && freedom === 1 ? 0 : term;
  for (let k = odd ? 3 : 2; k <= freedom - 2; k += 2) {
    term *= ((k - 1) / k) * cos * cos;
    sum += term;
  }
  const within = odd ? (2 / Math.PI) * (angle + sin * sum) : sin * sum;
  return Math.min(1, Math.max(0, 1 - within));
}
