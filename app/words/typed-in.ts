import { leadingNumber, parseAmount } from "../../core/quantity/amount.ts";
import { readLengthOfTime } from "../../core/quantity/length-of-time.ts";
import type { Ingredient } from "../../core/spec/ingredient.ts";
import { readIngredientLine } from "../../core/spec/ingredient-line.ts";
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
