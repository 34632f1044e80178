import { plainLetters } from "../quantity/plain-letters.ts";
import type { Ingredient } from "./ingredient.ts";

/** What a name may mean in the cupboard. */
export interface NameMatch {
  /** The one it means, where no other fits as well. */
  readonly sure?: Ingredient;
  /** All that fit, the best first. */
  readonly candidates: readonly Ingredient[];
}

/**
 * The words of a name with case, accents and punctuation gone: "Crème de mûre" is creme, de, mure.
 *
 * @param name - as typed
 */
export function foldedWords(name: string): readonly string[] {
  return plainLetters(name.normalize("NFKD")).match(/[\p{L}\p{N}]+/gu) ?? [];
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
