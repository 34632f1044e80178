import { type Amount, type AmountRefusal, parseAmount } from "../quantity/amount.ts";
import type { NumberStyle } from "../quantity/leading-number.ts";
import { accepted, type Result, refused } from "../quantity/result.ts";
import { findIngredients, foldedWords, type NameMatch } from "./find-ingredient.ts";
import type { Ingredient } from "./ingredient.ts";

/** A spec line as a person types it: an amount and a name. */
export interface ReadLine {
  readonly amount: Amount;
  /** The name as typed. */
  readonly named: string;
  readonly match: NameMatch;
}

/** Why a typed line was not understood. */
export type LineRefusal = AmountRefusal | "line-without-ingredient";

/** What joins an amount to its name: "of", in Spanish and French "de" and its like. */
const JOINT = /^(?:[\s,:·–-]+|[Oo]f\b|(?:de|del|du|des)\s|d['’])+/u;

interface Split {
  readonly amount: Amount;
  readonly named: string;
}

/** The amount may also stand last: "lemon juice 45 ml". */
function amountLast(text: string, style?: NumberStyle): Split | undefined {
  for (const { index } of text.matchAll(/(?<=[^\d\s/.,])[\s:,–-]+(?=[\d.¼-¾⅐-⅞])/gu)) {
    const read = parseAmount(text.slice(index).replace(/^[\s:,–-]+/u, ""), style);
    if (read.ok && read.value.rest === "") {
      return { amount: read.value, named: text.slice(0, index).trim() };
    }
  }
  return undefined;
}

function split(text: string, style?: NumberStyle): Result<Split, AmountRefusal> {
  const read = parseAmount(text, style);
  if (read.ok) return accepted({ amount: read.value, named: read.value.rest });
  const last = amountLast(text, style);
  return last === undefined ? read : accepted(last);
}

/**
 * Reads a spec line as it is said: "45ml lemon juice", "1 1/2 oz of gin", "gin 45 ml".
 *
 * @param text - as typed
 * @param ingredients - the cupboard
 * @param style - of the language it is typed in; English unless told
 * @returns the amount, the name and what the name may mean (nothing, where it is not in the cupboard),
 * or why the line makes no sense
 */
export function readIngredientLine(
  text: string,
  ingredients: Iterable<Ingredient>,
  style?: NumberStyle,
): Result<ReadLine, LineRefusal> {
  const read = split(text, style);
  if (!read.ok) return read;
  const { value, unit } = read.value.amount;
  const named = read.value.named.replace(JOINT, "").trim();
  if (foldedWords(named).length === 0) return refused("line-without-ingredient");
  return accepted({ amount: { value, unit }, named, match: findIngredients(named, ingredients) });
}
