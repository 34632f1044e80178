/**
 * Finds where a continuous function crosses zero inside a bracket (bisection with secant steps,
 * the Illinois variant of false position).
 *
 * @param f - continuous on [low, high], with different signs at its ends
 * @param low - left end of the bracket
 * @param high - right end of the bracket
 * @param tolerance - width of the bracket, in the unit of x, at which it is close enough
 * @returns x with f(x) about 0
 * @throws RangeError when f has the same sign at both ends
 * @source Dowell & Jarratt, BIT 11 (1971) 168-174 (the Illinois algorithm), from memory
 * @example
 * rootBetween((x) => x * x - 2, 0, 2, 1e-9) // => 1.41421356 ± 0.00000001
 */
export function rootBetween(
  f: (x: number) => number,
  low: number,
  high: number,
  tolerance: number,
): number {
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  // Signs are compared, not multiplied: a product of tiny values underflows to zero.
  if (!(Math.sign(fa) * Math.sign(fb) < 0)) {
    throw new RangeError(
      `the function must change sign between ${low} and ${high}, got ${fa} and ${fb}`,
    );
  }
  for (let turn = 0; turn < 200 && Math.abs(b - a) > tolerance; turn += 1) {
    // Every third turn halves the bracket, so that a flat end cannot stall it.
    const x = turn % 3 === 2 ? (a + b) / 2 : (a * fb - b * fa) / (fb - fa);
    const fx = f(x);
    if (fx === 0) return x;
    if (Math.sign(fx) !== Math.sign(fb)) {
      a = b;
      fa = fb;
    } else {
      fa /= 2;
    }
    b = x;
    fb = fx;
  }
  return b;
}
