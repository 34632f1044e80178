import { decimals, rounded, typed } from "./format.ts";
import { degreeSign, inHouse, stepInHouse } from "./house-units.ts";
import { tongue } from "./tongue.ts";

// Whatever is told of warmth goes through here. What is stored stays in degrees C.

const minus = (text: string): string => text.replace("-", "−");
const signed = (number: string): string => `${minus(number)}${tongue.value.gap}${degreeSign()}`;

/** Degrees C in the house's unit, without its sign. */
export const degreesBare = (celsius: number, places = 0): string =>
  minus(decimals(inHouse(celsius), places));

/** Degrees C as the house tells them: "5 °C", "41 °F". */
export const degrees = (celsius: number, places = 0): string =>
  signed(decimals(inHouse(celsius), places));

/** The same, never rounded up: for what begins to burn. */
export const degreesDown = (celsius: number): string =>
  signed(decimals(Math.floor(inHouse(celsius) + 1e-9), 0));

/** A difference, K, as the house tells it: "3 °C", "5 °F". */
export const degreesApart = (kelvins: number): string => signed(decimals(stepInHouse(kelvins), 0));

/** No thermometer behind a bar reads more decimals. */
const READ = 2;

/** A reading as it was read, up to a hundredth, for a field. */
export const degreesTyped = (celsius: number): string => minus(typed(inHouse(celsius), READ));

/** A reading as it was read: "3.5 °C", "38.3 °F". */
export const degreesRead = (celsius: number): string =>
  signed(typed(rounded(inHouse(celsius), READ), READ));
