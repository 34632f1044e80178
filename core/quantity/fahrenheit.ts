import { requireWithin } from "./require-within.ts";

/** Far beyond any bar, degrees C: absolute zero, and a flame. */
const [COLDEST, HOTTEST] = [-273.15, 2000];

/**
 * A temperature in degrees Fahrenheit.
 *
 * @param celsius - degrees C, -273.15 to 2000
 * @returns degrees F
 * @throws RangeError outside that range
 * @source NIST SP 811 (2008), section B.8: t/°C = (t/°F − 32) / 1.8, read in a reprinted table
 * @example
 * toFahrenheit(5) // => 41
 */
export function toFahrenheit(celsius: number): number {
  requireWithin(celsius, COLDEST, HOTTEST, "a temperature in degrees C");
  return celsius * 1.8 + 32;
}

/**
 * A temperature in degrees Celsius, to a ten-thousandth: what was typed in degrees F to a hundredth
 * comes back as it was typed, and nothing stored carries more digits than were meant.
 *
 * @param fahrenheit - degrees F, -459.67 to 3632
 * @returns degrees C
 * @throws RangeError outside that range
 * @source NIST SP 811 (2008), section B.8: t/°C = (t/°F − 32) / 1.8, read in a reprinted table
 * @example
 * toCelsius(41) // => 5
 */
export function toCelsius(fahrenheit: number): number {
  requireWithin(fahrenheit, -459.67, 3632, "a temperature in degrees F");
  const celsius = Math.round(((fahrenheit - 32) / 1.8) * 10_000) / 10_000;
  return celsius === 0 ? 0 : celsius;
}

/**
 * By how much: a difference of temperatures in degrees Fahrenheit.
 *
 * @param kelvins - the difference, K
 * @returns the same difference, degrees F
 * @source NIST SP 811 (2008), section B.8: 1 °F of a difference is 1/1.8 K, read in a reprinted table
 * @example
 * fahrenheitStep(5) // => 9
 */
export const fahrenheitStep = (kelvins: number): number => kelvins * 1.8;
