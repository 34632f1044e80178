import { parseAmount } from "../../core/quantity/amount.ts";
import { toCelsius } from "../../core/quantity/fahrenheit.ts";
import { leadingNumber } from "../../core/quantity/leading-number.ts";
import { readLengthOfTime } from "../../core/quantity/length-of-time.ts";
import type { Ingredient } from "../../core/spec/ingredient.ts";
import { readIngredientLine } from "../../core/spec/ingredient-line.ts";
import { degreeUnit } from "./house-units.ts";
import { tongue } from "./tongue.ts";

// Whatever a person types is read here, with the decimal mark of the language that is spoken.

/** The number at the head of what was typed. */
export const numberIn = (text: string) => leadingNumber(text, tongue.value.numbers);

/** An amount with its unit. */
export const amountIn = (text: string) => parseAmount(text, tongue.value.numbers);

/** A length of time, ms. */
export const lengthIn = (text: string) => readLengthOfTime(text, tongue.value.numbers);

/** A line of a spec. */
export const lineIn = (text: string, ingredients: Iterable<Ingredient>) =>
  readIngredientLine(text, ingredients, tongue.value.numbers);

const BELOW_ZERO = /^[-−–]\s*/u;
/** "°" is of the house's unit; a letter is of its own. */
const SIGN = /^°?\s*([cf])?$/iu;

/** Nothing behind a bar is so hot, or so cold, degrees F. */
const HOTTEST = 450;

/** Degrees C of what was typed, in the house's unit or with its sign; nothing where it is none. */
export function celsiusIn(text: string): number | undefined {
  const clean = text.trim();
  const lead = numberIn(clean.replace(BELOW_ZERO, ""));
  const sign = SIGN.exec(lead?.rest ?? "");
  if (lead === undefined || sign === null) return undefined;
  const figure = BELOW_ZERO.test(clean) ? 0 - lead.value : lead.value;
  if ((sign[1]?.toUpperCase() ?? degreeUnit()) === "C") return figure;
  return Math.abs(figure) > HOTTEST ? undefined : toCelsius(figure);
}
