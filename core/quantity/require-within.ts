/**
 * Stops a calculation that was handed a value outside its range.
 *
 * @param value - what came
 * @param low - least allowed
 * @param high - most allowed
 * @param what - the value's name and unit, for the message
 * @throws RangeError outside low to high, or when not a number
 */
export function requireWithin(value: number, low: number, high: number, what: string): void {
  if (!(value >= low && value <= high)) {
    throw new RangeError(`${what} must lie between ${low} and ${high}, got ${value}`);
  }
}
