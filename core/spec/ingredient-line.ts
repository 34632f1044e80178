import {
  type Amount,
  type AmountRefusal,
  type NumberStyle,
  parseAmount,
} from "../quantity/amount.ts";
import { accepted, type Result, refused } from "../quantity/result.ts";
import type { Ingredient } from "./ingredient.ts";

/** What a name may mean in the cupboard. */
export interface NameMatch {
  /** The one it means, where no other fits as well. */
  readonly sure?: Ingredient;
  /** All that fit, the best first. */
  readonly candidates: readonly Ingredient[];
}

/** A spec line as a person types it: an amount and a name. */
export interface ReadLine {
  readonly amount: Amount;
  /** The name as typed. */
  readonly named: string;
  readonly match: NameMatch;
}

/** Why a typed line was not understood. */
export type LineRefusal = AmountRefusal | "line-without-ingredient";

/** Letters that decomposition leaves whole. Judgement: what bar names in Europe need. */
const LETTERS: Readonly<Record<string, string>> = { ß: "ss", æ: "ae", œ: "oe", ø: "o", ł: "l" };

/**
 * The words of a name with case, accents and punctuation gone: "Crème de mûre" is creme, de, mure.
 *
 * @param name - as typed
 */
export function foldedWords(name: string): readonly string[] {
  const bare = name.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();
  const plain = bare.replace(/[ßæœøł]/gu, (letter) => LETTERS[letter] ?? letter);
  return plain.match(/[\p{L}\p{N}]+/gu) ?? [];
}

/** Below this a slip of the finger cannot be told from another word. Judgement. */
const LEAST_FOR_SLIP = 3;

/** Whether one slip (a letter too many, too few, wrong, or two swapped) makes one word the other. */
function oneSlipApart(a: string, b: string): boolean {
  const [short, long] = a.length <= b.length ? [a, b] : [b, a];
  if (short.length < LEAST_FOR_SLIP || long.length - short.length > 1) return false;
  let at = 0;
  while (at < short.length && short[at] === long[at]) at += 1;
  if (short.length < long.length) return short.slice(at) === long.slice(at + 1);
  if (short.slice(at + 1) === long.slice(at + 1)) return true;
  const swapped = short[at] === long[at + 1] && short[at + 1] === long[at];
  return swapped && short.slice(at + 2) === long.slice(at + 2);
}

type Fits = (typed: string, word: string) => boolean;
const whole: Fits = (typed, word) => typed === word;
const begins: Fits = (typed, word) => word.startsWith(typed);
const slipped: Fits = (typed, word) => typed === word || oneSlipApart(typed, word);

const inOrder = (typed: readonly string[], words: readonly string[], fits: Fits): boolean =>
  typed.every((one, at) => fits(one, words[at] ?? ""));
const anywhere = (typed: readonly string[], words: readonly string[], fits: Fits): boolean =>
  typed.every((one) => words.some((word) => fits(one, word)));

/** How well a name fits, best last; the first is a guess at a slip and never sure. */
const TIERS: readonly ((typed: readonly string[], words: readonly string[]) => boolean)[] = [
  (typed, words) => anywhere(typed, words, slipped),
  (typed, words) => anywhere(typed, words, begins),
  (typed, words) => inOrder(typed, words, begins),
  (typed, words) => anywhere(typed, words, whole),
  (typed, words) => inOrder(typed, words, whole),
  (typed, words) => typed.length === words.length && inOrder(typed, words, whole),
];

/**
 * Finds what a typed name means in the cupboard: accents, case and word order do not matter, words
 * may be cut short, and one slip of the finger a word is forgiven (but then asked about).
 *
 * @param name - as typed
 * @param ingredients - the cupboard
 */
export function findIngredients(name: string, ingredients: Iterable<Ingredient>): NameMatch {
  const typed = foldedWords(name);
  if (typed.length === 0) return { candidates: [] };
  const found = [...ingredients].flatMap((ingredient) => {
    const words = foldedWords(ingredient.name);
    const tier = TIERS.findLastIndex((fits) => fits(typed, words));
    return tier < 0 ? [] : [{ ingredient, tier, extra: words.length }];
  });
  found.sort((a, b) => b.tier - a.tier || a.extra - b.extra);
  const candidates = found.map(({ ingredient }) => ingredient);
  const [first, second] = found;
  const sure = first !== undefined && first.tier > 0 && first.tier !== second?.tier;
  return sure ? { sure: first.ingredient, candidates } : { candidates };
}

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
