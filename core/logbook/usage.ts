import { barDaysBetween, type Stock } from "../run/stock.ts";
import { quartilesOf } from "./quartiles.ts";
import type { BatchRecord } from "./record.ts";

/** How fast a spec is poured, as this bar logged it: an estimate. */
export interface Usage {
  /** ml a day, over all days on which there was some to pour. */
  readonly mlPerDay: number;
  /** Evenings on which something was logged. */
  readonly evenings: number;
  /** Days that were looked at, those without a pour among them. */
  readonly days: number;
}

const WINDOW = 28;
/** Fewer evenings or days say nothing yet: judgement. */
const FEWEST_EVENINGS = 3;
const FEWEST_DAYS = 7;
/** What lies so many quartile ranges above the upper quartile counts as that much and no more. */
const FENCE = 1.5;

type Stocked = Pick<BatchRecord, "bottled" | "stock">;

interface OnShelf {
  readonly at: number;
  readonly useBy: number;
  readonly stock: Stock;
}

/** When a batch was no longer there to be poured: gone, poured dry, or past its use-by. */
function goneAt({ useBy, stock }: OnShelf, now: number): number {
  const { leftMl, ended, poured } = stock;
  const gone = ended?.at ?? (leftMl > 0 ? now : (poured.at(-1)?.at ?? now));
  return Math.min(gone, useBy, now);
}

const within = (day: number): boolean => day >= 0 && day < WINDOW;

/** Days on which there was something to pour; counted back from today, which is 0. */
function daysThere(one: OnShelf, now: number): readonly number[] {
  const first = Math.min(WINDOW - 1, barDaysBetween(now, one.at));
  const last = Math.max(0, barDaysBetween(now, goneAt(one, now)));
  const days = Array.from({ length: Math.max(0, first - last + 1) }, (_, day) => last + day);
  const poured = one.stock.poured.map(({ at }) => barDaysBetween(now, at));
  return [...days, ...poured.filter(within)];
}

/** What was poured on each day, ml. */
function pouredByDay(batches: readonly OnShelf[], now: number): readonly number[] {
  const byDay = new Map<number, number>();
  for (const { at, ml } of batches.flatMap(({ stock }) => stock.poured)) {
    const day = barDaysBetween(now, at);
    if (within(day)) byDay.set(day, (byDay.get(day) ?? 0) + ml);
  }
  return [...byDay.values()];
}

/**
 * How fast a spec is poured: the mean over the days of the last four weeks on which it was there,
 * one evening of a private party counting no more than a very good evening.
 *
 * @param batches - every batch of one spec
 * @param now - epoch ms
 * @returns nothing while fewer than three evenings or seven days are known
 * @source evenings above the upper quartile by more than 1.5 quartile ranges are cut back to that
 *   fence: Tukey, Exploratory data analysis, 1977 (from memory); window and least counts by judgement
 * @limits only what was logged; a day on which nobody logged counts as a day without a pour
 */
export function usageOf(batches: readonly Stocked[], now: number): Usage | undefined {
  const shelved = batches.flatMap(({ bottled, stock }): readonly OnShelf[] =>
    bottled === undefined || stock === undefined
      ? []
      : [{ at: bottled.at, useBy: bottled.useBy, stock }],
  );
  const poured = pouredByDay(shelved, now);
  const days = new Set(shelved.flatMap((one) => daysThere(one, now))).size;
  if (poured.length < FEWEST_EVENINGS || days < FEWEST_DAYS) return undefined;
  const { low, high } = quartilesOf(poured);
  const fence = high + FENCE * (high - low);
  const total = poured.reduce((sum, ml) => sum + Math.min(ml, fence), 0);
  return { mlPerDay: total / days, evenings: poured.length, days };
}
