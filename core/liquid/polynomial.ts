/**
 * Value of a polynomial by Horner's rule.
 *
 * @param coefficients - of the powers 0, 1, 2 and so on
 * @param x - where
 * @returns the sum of coefficient times power
 * @example
 * polynomial([1, 2, 3], 2) // => 17
 */
export function polynomial(coefficients: readonly number[], x: number): number {
  let sum = 0;
  for (let power = coefficients.length - 1; power >= 0; power -= 1) {
    sum = sum * x + (coefficients[power] ?? 0);
  }
  return sum;
}
