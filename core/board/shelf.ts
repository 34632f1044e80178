import { differenceInCalendarDays } from "date-fns/differenceInCalendarDays";
import type { Bottles } from "../run/event.ts";
import type { Stock } from "../run/stock.ts";

/** `last-day`: today is the day of the use-by. `past`: discard. */
export type Keeping = "in-date" | "last-day" | "past";

/** A batch as the shelf needs it: its record has all of this. */
export interface MayBeShelved {
  readonly runId: string;
  readonly specId: string;
  readonly name: string;
  readonly batch: string;
  readonly pour: number;
  readonly bottled?: {
    readonly at: number;
    readonly bottles: readonly Bottles[];
    readonly useBy: number;
  };
  readonly stock?: Stock;
}

/** A bottled batch as it stands on the shelf. Volumes in ml. */
export interface Shelved {
  readonly runId: string;
  readonly specId: string;
  readonly name: string;
  readonly batch: string;
  /** Epoch ms. */
  readonly bottledAt: number;
  readonly useBy: number;
  readonly keeping: Keeping;
  /** Local days until the day of the use-by: 0 on that day, negative after it. */
  readonly daysLeft: number;
  readonly bottles: readonly Bottles[];
  /** All bottles together. */
  readonly ml: number;
  /** What is left of it by what was logged; never below nothing. */
  readonly leftMl: number;
  /** More was logged than there was, by so much. */
  readonly overMl: number;
  /** One serve. */
  readonly pour: number;
}

/** A batch that is no longer on the shelf. */
export interface Gone {
  readonly runId: string;
  readonly name: string;
  readonly batch: string;
  readonly ended: NonNullable<Stock["ended"]>;
}

function keepingAt(useBy: number, daysLeft: number, now: number): Keeping {
  if (now > useBy) return "past";
  return daysLeft <= 0 ? "last-day" : "in-date";
}

function shelved(record: MayBeShelved, now: number): readonly Shelved[] {
  const { runId, specId, name, batch, pour, bottled, stock } = record;
  if (bottled === undefined || stock === undefined || stock.ended !== undefined) return [];
  const { useBy, bottles, at } = bottled;
  const daysLeft = differenceInCalendarDays(useBy, now);
  return [
    {
      runId,
      specId,
      name,
      batch,
      bottledAt: at,
      useBy,
      keeping: keepingAt(useBy, daysLeft, now),
      daysLeft,
      bottles,
      ml: stock.bottledMl,
      leftMl: stock.leftMl,
      overMl: stock.overMl,
      pour,
    },
  ];
}

/**
 * What is bottled and neither spent nor discarded, the earliest use-by first.
 *
 * @param records - any; those without a bottling are left out
 * @param now - epoch ms
 * @returns days counted by the phone's calendar, whatever the clocks do in between
 */
export function shelfOf(records: readonly MayBeShelved[], now: number): readonly Shelved[] {
  return records
    .flatMap((record) => shelved(record, now))
    .sort((a, b) => a.useBy - b.useBy || a.bottledAt - b.bottledAt);
}

/**
 * What has lately left the shelf, the latest first.
 *
 * @param since - epoch ms
 */
export function goneSince(records: readonly MayBeShelved[], since: number): readonly Gone[] {
  return records
    .flatMap(({ runId, name, batch, stock }) => {
      const ended = stock?.ended;
      return ended === undefined || ended.at < since ? [] : [{ runId, name, batch, ended }];
    })
    .sort((a, b) => b.ended.at - a.ended.at);
}
