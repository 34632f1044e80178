/** Steps a jigger or a jug is marked in, ml. Common practice, no source. */
export const VOLUME_STEPS = [1, 2.5, 5] as const;
/** Steps a bar's scale shows, g. Common practice, no source. */
export const MASS_STEPS = [0.1, 1, 5] as const;

/** A count of steps that lies this close below a half was a half before it was divided. */
const HALF_SLIP = 1e-9;

/**
 * An amount as a jigger or a scale can measure it: the nearest step, halves up, and never nothing
 * where there was something.
 *
 * @param amount - ml or g, 0 or more
 * @param step - of the tool, in the same unit, above 0
 * @returns a whole number of steps; 0 only for 0
 * @throws RangeError when the amount is negative or the step is not above 0
 * @example
 * roundToStep(61.2, 2.5) // => 60
 */
export function roundToStep(amount: number, step: number): number {
  if (!(amount >= 0 && Number.isFinite(amount))) {
    throw new RangeError(`an amount to round must be 0 or more, got ${amount}`);
  }
  if (!(step > 0 && Number.isFinite(step))) {
    throw new RangeError(`a step must be above 0, got ${step}`);
  }
  if (amount === 0) return 0;
  const steps = Math.max(1, Math.round(amount / step + HALF_SLIP));
  // 3 x 0.1 is 0.30000000000000004: what is measured is 0.3.
  return Number((steps * step).toPrecision(12));
}
