import { endingOf, type Run, roundOf } from "../run/run.ts";

/** One passage through a step, as a control sheet lists it. Times in epoch ms. */
export interface SheetStep {
  readonly step: string;
  readonly round: number;
  readonly from: number;
  readonly to?: number;
  /** Initials of whoever had it in hand when it began. */
  readonly by?: string;
}

/** What a food-safety officer asks of a batch: when, how warm, of which lots, by whom. */
export interface ControlSheet {
  readonly steps: readonly SheetStep[];
  /** degrees C */
  readonly temperatures: readonly { readonly at: number; readonly celsius: number }[];
  readonly lots: readonly {
    readonly ingredient: string;
    readonly lot: string;
    readonly useBy?: number;
  }[];
  readonly hands: readonly { readonly at: number; readonly initials: string }[];
  /** The earliest use-by date among the lots; a mixed food is kept no longer than that. */
  readonly earliestLot?: number;
  readonly endedAt?: number;
}

const handsAt = (run: Run, at: number): string | undefined =>
  run.hands.findLast((one) => one.at <= at)?.initials;

function stepsOf(run: Run): readonly SheetStep[] {
  return run.visits.map((visit) => {
    const by = handsAt(run, visit.startedAt);
    return {
      step: visit.step,
      round: roundOf(visit),
      from: visit.startedAt,
      ...(visit.finishedAt === undefined ? {} : { to: visit.finishedAt }),
      ...(by === undefined ? {} : { by }),
    };
  });
}

/**
 * The control sheet of a batch, from its log alone.
 *
 * @param run - as its log tells it
 * @source what is listed: procedures based on HACCP principles with records, Regulation (EC)
 *   852/2004 article 5 (table of contents read in the reference notes); the columns are common
 *   practice, no source
 */
export function controlSheetOf(run: Run): ControlSheet {
  const lots = run.lots.map(({ ingredient, lot, useBy }) => ({
    ingredient,
    lot,
    ...(useBy === undefined ? {} : { useBy }),
  }));
  const dates = lots.flatMap(({ useBy }) => useBy ?? []);
  const ended = endingOf(run);
  return {
    steps: stepsOf(run),
    temperatures: run.readings.flatMap(({ what, unit, at, value }) =>
      what === "temperature" && unit === "degC" ? [{ at, celsius: value }] : [],
    ),
    lots,
    hands: run.hands.map(({ at, initials }) => ({ at, initials })),
    ...(dates.length === 0 ? {} : { earliestLot: Math.min(...dates) }),
    ...(ended === undefined ? {} : { endedAt: ended.at }),
  };
}
