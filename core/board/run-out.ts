import { DAY } from "../quantity/time-units-table.ts";
import type { Shelved } from "./shelf.ts";

/** What is there to be poured: ml left, and until when it may be. */
export type StockLeft = Pick<Shelved, "leftMl" | "useBy">;

/**
 * When the bar will have nothing left of a spec: each batch is poured at the usual rate, the one with
 * the earliest use-by first, and what is left past its use-by is not counted.
 *
 * @param batches - of one spec
 * @param mlPerDay - more than nothing
 * @param now - epoch ms
 * @returns epoch ms; `now` where nothing is left that may be served
 */
export function runsOutAt(batches: readonly StockLeft[], mlPerDay: number, now: number): number {
  let until = now;
  for (const { leftMl, useBy } of batches.toSorted((a, b) => a.useBy - b.useBy)) {
    const poured = until + (leftMl / mlPerDay) * DAY;
    until = Math.max(until, Math.min(poured, useBy));
  }
  return Math.round(until);
}
