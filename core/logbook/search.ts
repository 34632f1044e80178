import { plainLetters } from "../quantity/plain-letters.ts";
import { byText } from "../run/order.ts";
import type { Repeat, Verdict } from "../run/taste.ts";
import type { EndedBatch } from "./logbook.ts";
import { quartilesOf } from "./quartiles.ts";

/** `low` and `high`: further from what was expected than is usual. */
export type YieldBand = "low" | "near" | "high";

/** What is looked for; what is left out does not matter. */
export interface Wanted {
  /** Words that all have to be found somewhere in the batch. */
  readonly text?: string;
  readonly specId?: string;
  /** By name. */
  readonly ingredient?: string;
  /** When it ended, epoch ms, both included. */
  readonly from?: number;
  readonly to?: number;
  readonly verdict?: Verdict;
  readonly repeat?: Repeat;
  readonly yielded?: YieldBand;
  readonly tag?: string;
}

/** What some batches came to together. */
export interface Summary {
  readonly batches: number;
  /** Median share of what was poured in that came through, and of how many batches. */
  readonly share?: { readonly median: number; readonly of: number };
}

/** Closer to the expected yield than this, relative, is as expected: judgement. */
const NEAR = 0.05;

const texts = new WeakMap<EndedBatch, string>();

/** What a batch is found by; worked out once, for a record never changes. */
export function searchTextOf(record: EndedBatch): string {
  let text = texts.get(record);
  if (text === undefined) {
    const { name, batch, ingredients, tags, notes, ending, taste } = record;
    const words = taste?.words ?? [];
    text = plainLetters(
      [name, batch, notes, ending.reason ?? "", ...ingredients, ...tags, ...words].join("\n"),
    );
    texts.set(record, text);
  }
  return text;
}

/** How a batch came out beside what was expected. */
export function yieldBandOf({ yielded }: EndedBatch): YieldBand | undefined {
  if (yielded === undefined || !(yielded.expectedShare > 0)) return undefined;
  const ratio = yielded.share / yielded.expectedShare;
  return ratio < 1 - NEAR ? "low" : ratio > 1 + NEAR ? "high" : "near";
}

function fits(record: EndedBatch, wanted: Wanted): boolean {
  const { specId, ingredient, from, to, verdict, repeat, yielded, tag } = wanted;
  const { at } = record.ending;
  return (
    (specId === undefined || record.specId === specId) &&
    (from === undefined || at >= from) &&
    (to === undefined || at <= to) &&
    (verdict === undefined || record.verdict === verdict) &&
    (repeat === undefined || record.wouldRepeat === repeat) &&
    (tag === undefined || record.tags.includes(tag)) &&
    (ingredient === undefined || record.ingredients.includes(ingredient)) &&
    (yielded === undefined || yieldBandOf(record) === yielded)
  );
}

/**
 * The batches that are looked for, in the order they came.
 *
 * @param batches - ended ones
 * @param wanted - all of it must fit
 */
export function searchLogbook(
  batches: readonly EndedBatch[],
  wanted: Wanted,
): readonly EndedBatch[] {
  const words = plainLetters(wanted.text ?? "")
    .split(/\s+/u)
    .filter((word) => word !== "");
  return batches.filter(
    (record) =>
      fits(record, wanted) &&
      (words.length === 0 || words.every((word) => searchTextOf(record).includes(word))),
  );
}

/** What some batches came to together. */
export function summaryOf(batches: readonly EndedBatch[]): Summary {
  const shares = batches.flatMap(({ yielded }) => yielded?.share ?? []);
  if (shares.length === 0) return { batches: batches.length };
  return {
    batches: batches.length,
    share: { median: quartilesOf(shares).median, of: shares.length },
  };
}

/** What there is to choose from, each once and by its name. */
export interface Facets {
  readonly specs: readonly { readonly id: string; readonly name: string }[];
  readonly ingredients: readonly string[];
  readonly tags: readonly string[];
}

/** What the batches of a logbook can be told apart by. The latest name of a spec counts. */
export function facetsOf(batches: readonly EndedBatch[]): Facets {
  const specs = new Map<string, string>();
  const ingredients = new Set<string>();
  const tags = new Set<string>();
  for (const record of batches) {
    if (!specs.has(record.specId)) specs.set(record.specId, record.name);
    for (const one of record.ingredients) ingredients.add(one);
    for (const one of record.tags) tags.add(one);
  }
  const byPlain = (a: string, b: string) => byText(plainLetters(a), plainLetters(b));
  return {
    specs: [...specs].map(([id, name]) => ({ id, name })).sort((a, b) => byPlain(a.name, b.name)),
    ingredients: [...ingredients].sort(byPlain),
    tags: [...tags].sort(byPlain),
  };
}
