import { differenceInCalendarDays } from "date-fns/differenceInCalendarDays";
import type { Bottles } from "../run/event.ts";
import { bottledOf, type Run } from "../run/run.ts";

/** `last-day`: today is the day of the use-by. `past`: discard. */
export type Keeping = "in-date" | "last-day" | "past";

/** A bottled batch as it stands on the shelf. */
export interface Shelved {
  readonly runId: string;
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
}

function keepingAt(useBy: number, daysLeft: number, now: number): Keeping {
  if (now > useBy) return "past";
  return daysLeft <= 0 ? "last-day" : "in-date";
}

function shelved(run: Run, now: number): readonly Shelved[] {
  const bottled = bottledOf(run);
  if (bottled === undefined) return [];
  const { useBy, bottles, at } = bottled;
  const daysLeft = differenceInCalendarDays(useBy, now);
  return [
    {
      runId: run.id,
      name: run.plan.spec.name,
      batch: run.batch,
      bottledAt: at,
      useBy,
      keeping: keepingAt(useBy, daysLeft, now),
      daysLeft,
      bottles,
      ml: bottles.reduce((sum, { count, size }) => sum + count * size, 0),
    },
  ];
}

/**
 * What is bottled, the earliest use-by first.
 *
 * @param runs - any; those without a bottling are left out
 * @param now - epoch ms
 * @returns days counted by the phone's calendar, whatever the clocks do in between
 */
export function shelfOf(runs: readonly Run[], now: number): readonly Shelved[] {
  return runs
    .flatMap((run) => shelved(run, now))
    .sort((a, b) => a.useBy - b.useBy || a.bottledAt - b.bottledAt);
}
