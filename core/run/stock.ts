import { differenceInCalendarDays } from "date-fns/differenceInCalendarDays";
import { getHours } from "date-fns/getHours";
import type { Bottles, StockEnd } from "./event.ts";
import { bottledOf, type Run } from "./run.ts";

/** What went out in one evening. */
export interface PouredDay {
  /** The last pour of it, epoch ms. */
  readonly at: number;
  readonly ml: number;
}

/** What is left of a bottled batch, and where the rest went. Volumes in ml. */
export interface Stock {
  readonly bottledMl: number;
  /** Never below nothing. */
  readonly leftMl: number;
  /** How much more was logged than there was; somebody has to say what is wrong. */
  readonly overMl: number;
  /** By evening, the earliest first: the last forty. */
  readonly poured: readonly PouredDay[];
  readonly ended?: { readonly at: number; readonly how: StockEnd; readonly reason: string };
}

/**
 * A bar's day ends when the last guests are gone, not at midnight: at this hour by the clock on the
 * wall. Common practice, no source.
 */
const DAY_ENDS = 6;
/** More evenings than the use is learnt from; keeps a record small. */
const MOST_DAYS = 40;
/** Sums of parts differ by so much, ml. */
const SLACK = 1e-6;

/** 1 in the hours that still belong to the evening before, else 0. */
const smallHours = (at: number): 0 | 1 => (getHours(at) < DAY_ENDS ? 1 : 0);

/**
 * How many bar days lie between two moments: a pour at one in the morning is last night's.
 *
 * @param later - epoch ms
 * @param earlier - epoch ms
 * @returns whole days by the phone's calendar, whatever the clocks do in between; below 0 where they are the other way round
 */
export const barDaysBetween = (later: number, earlier: number): number =>
  differenceInCalendarDays(later, earlier) - smallHours(later) + smallHours(earlier);

/** What bottles hold together, ml. */
export const bottlesMl = (bottles: readonly Bottles[]): number =>
  bottles.reduce((sum, { count, size }) => sum + count * size, 0);

function byEvening(run: Run): readonly PouredDay[] {
  const evenings: PouredDay[] = [];
  for (const { at, ml } of run.stockPoured.toSorted((a, b) => a.at - b.at)) {
    const last = evenings.at(-1);
    if (last !== undefined && barDaysBetween(at, last.at) === 0) {
      evenings[evenings.length - 1] = { at, ml: last.ml + ml };
    } else evenings.push({ at, ml });
  }
  return evenings.slice(-MOST_DAYS);
}

/**
 * What is left of a batch in its bottles.
 *
 * @param run - as its log tells it
 * @returns nothing before it is bottled
 */
export function stockOf(run: Run): Stock | undefined {
  const bottled = bottledOf(run);
  if (bottled === undefined) return undefined;
  const bottledMl = bottlesMl(bottled.bottles);
  const out = run.stockPoured.reduce((sum, { ml }) => sum + ml, 0);
  const left = bottledMl - out;
  const [end] = run.stockEnded;
  return {
    bottledMl,
    leftMl: end === undefined && left > SLACK ? left : 0,
    overMl: left < -SLACK ? -left : 0,
    poured: byEvening(run),
    ...(end === undefined ? {} : { ended: { at: end.at, how: end.how, reason: end.reason } }),
  };
}
