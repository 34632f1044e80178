import type { Outcome } from "../method/procedure.ts";
import { type Run, roundOf, stepOfVisit } from "../run/run.ts";
import type { Cell } from "./csv.ts";
import type { CsvSay, CsvWord } from "./csv-say.ts";

/** Something measured or seen in a run. */
interface Measured {
  readonly at: number;
  readonly device: string;
  readonly visit: string;
  readonly what: CsvWord;
  readonly value?: number;
  readonly unit?: string;
  readonly look?: Outcome;
  readonly weighed?: { readonly gross: number; readonly tare: number } | undefined;
}

/** All that was measured or seen and not taken back, as it happened. */
function measuredIn(run: Run): readonly Measured[] {
  const ml = (what: CsvWord) => (one: Omit<Measured, "what"> & { readonly ml: number }) => ({
    ...one,
    what,
    value: one.ml,
    unit: "ml",
  });
  const all: readonly Measured[] = [
    ...run.readings,
    ...run.looks.map((one) => ({ ...one, what: "seen" as const })),
    ...run.rePours.map(ml("poured-back")),
    ...run.yields.map(ml("yield")),
    ...run.topUps.map(ml("top-up")),
  ];
  return all.toSorted((a, b) => a.at - b.at);
}

/** Columns of the table of readings, in their order. */
export const READING_COLUMNS = [
  "batch",
  "spec",
  "time",
  "step",
  "round",
  "what",
  "value",
  "unit",
  "look",
  "gross",
  "tare",
  "phone",
] as const;

/** A column of the table of readings. */
export type ReadingColumn = (typeof READING_COLUMNS)[number];

function readingCells(run: Run, one: Measured, say: CsvSay): Readonly<Record<ReadingColumn, Cell>> {
  const visit = run.visits.find(({ key }) => key === one.visit);
  return {
    batch: run.batch,
    spec: run.plan.spec.name,
    time: say.time(one.at),
    step: visit === undefined ? one.visit : say.step(stepOfVisit(run, visit)),
    round: visit === undefined ? undefined : roundOf(visit),
    what: say.word(one.what),
    value: one.value,
    unit: one.unit,
    look: one.look === undefined ? undefined : say.word(one.look),
    gross: one.weighed?.gross,
    tare: one.weighed?.tare,
    phone: one.device,
  };
}

/** Every reading of a run as rows of the table of readings: volumes in ml, masses in g. */
export const readingRows = (run: Run, say: CsvSay): readonly (readonly Cell[])[] =>
  measuredIn(run).map((one) => {
    const cells = readingCells(run, one, say);
    return READING_COLUMNS.map((column) => cells[column]);
  });
