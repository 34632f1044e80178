import type { Outcome, ReadingKey } from "../method/procedure.ts";
import { MINUTE } from "../quantity/time-units-table.ts";
import { type Run, roundOf, stepOfVisit } from "../run/run.ts";
import { bottlesMl } from "../run/stock.ts";
import type { BatchRecord } from "./record.ts";

/** What a cell of a table holds: a figure, a text, or nothing. */
export type Cell = number | string | undefined;

/** Stands before the first row, or spreadsheets take UTF-8 for something older. */
export const CSV_MARK = "\uFEFF";

/** A spreadsheet takes a text that begins so for a formula and works it out. */
const FORMULA = /^[=+\-@\t\r\n\0＝＋－＠]/u;
const NEEDS_QUOTES = /[",\r\n]|^\s|\s$/u;
/** More digits than this are the binary's, not the figure's. */
const DIGITS = 12;

function cellText(cell: Cell): string {
  if (cell === undefined) return "";
  if (typeof cell === "number") {
    return Number.isFinite(cell) ? String(Number(cell.toPrecision(DIGITS))) : "";
  }
  const safe = FORMULA.test(cell) ? `'${cell}` : cell;
  return NEEDS_QUOTES.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/**
 * One row of a table, with its line end. Figures stay figures, with a point; a text that a spreadsheet
 * would work out as a formula gets an apostrophe before it.
 *
 * @source quotes, commas and line ends: RFC 4180, section 2. Which beginnings are a formula's: OWASP
 *   ASVS 5, requirement 1.2.10 (read in a copy), with carriage return, line feed and the full-width
 *   forms by judgement
 * @example
 * csvRow(["=1+1", -2.5, undefined]).length // => 13
 */
export const csvRow = (cells: readonly Cell[]): string => `${cells.map(cellText).join(",")}\r\n`;

/** Words of ours that stand in cells. */
export type CsvWord =
  | NonNullable<BatchRecord["ending"]>["how"]
  | ReadingKey
  | Outcome
  | "poured-back"
  | "seen";

/** How times and our own words are written in cells. */
export interface CsvSay {
  /** ISO 8601 with the offset of the place. */
  readonly time: (at: number) => string;
  readonly word: (word: CsvWord) => string;
  /** What a step of a run is called. */
  readonly step: (step: { readonly id: string; readonly title?: string | undefined }) => string;
}

type Column = (record: BatchRecord, say: CsvSay) => Cell;

const share = (part: number | undefined): Cell => (part === undefined ? undefined : part * 100);
const timed = (at: number | undefined, { time }: CsvSay): Cell =>
  at === undefined ? undefined : time(at);
const listed = (some: readonly string[]): Cell => (some.length === 0 ? undefined : some.join("; "));

/**
 * Columns of the table of batches, in their order. Volumes in ml, shares and strengths in per cent,
 * sugar and acid in g per litre, the wait until it ran clear in minutes.
 */
export const BATCH_COLUMNS = [
  "batch",
  "spec",
  "procedure",
  "started",
  "ended",
  "how",
  "reason",
  "punch",
  "milk",
  "poured",
  "yield",
  "share",
  "expected",
  "expectedShare",
  "passes",
  "clearedAfter",
  "strengthPlanned",
  "strength",
  "sugarPlanned",
  "sugar",
  "acidPlanned",
  "acid",
  "topUpPlanned",
  "topUp",
  "bottled",
  "bottles",
  "bottledMl",
  "useBy",
  "pour",
  "ingredients",
  "tags",
] as const;

/** A column of the table of batches. */
export type BatchColumn = (typeof BATCH_COLUMNS)[number];

const BATCH: Readonly<Record<BatchColumn, Column>> = {
  batch: ({ batch }) => batch,
  spec: ({ name }) => name,
  procedure: ({ procedureId }) => procedureId,
  started: ({ startedAt }, { time }) => time(startedAt),
  ended: ({ ending }, say) => timed(ending?.at, say),
  how: ({ ending }, { word }) => (ending === undefined ? undefined : word(ending.how)),
  reason: ({ ending }) => ending?.reason,
  punch: ({ wash }) => wash?.punchMl,
  milk: ({ wash }) => wash?.milkMl,
  poured: ({ yielded }) => yielded?.poured,
  yield: ({ yielded }) => yielded?.ml,
  share: ({ yielded }) => share(yielded?.share),
  expected: ({ yielded }) => yielded?.expectedMl,
  expectedShare: ({ yielded }) => share(yielded?.expectedShare),
  passes: ({ passes, wash }) => (wash === undefined ? undefined : passes),
  clearedAfter: ({ cleared }) => (cleared === undefined ? undefined : cleared.took / MINUTE),
  strengthPlanned: ({ planned }) => share(planned.strength),
  strength: ({ actual }) => share(actual.strength),
  sugarPlanned: ({ planned }) => planned.sugar,
  sugar: ({ actual }) => actual.sugar,
  acidPlanned: ({ planned }) => planned.acid,
  acid: ({ actual }) => actual.acid,
  topUpPlanned: ({ topUp }) => topUp?.planned,
  topUp: ({ topUp }) => topUp?.poured,
  bottled: ({ bottled }, say) => timed(bottled?.at, say),
  bottles: ({ bottled }) => bottled?.bottles.reduce((sum, { count }) => sum + count, 0),
  bottledMl: ({ bottled }) => bottled && bottlesMl(bottled.bottles),
  useBy: ({ bottled }, say) => timed(bottled?.useBy, say),
  pour: ({ pour }) => pour,
  ingredients: ({ ingredients }) => listed(ingredients),
  tags: ({ tags }) => listed(tags),
};

/** One batch as a row of the table of batches. */
export const batchCells = (record: BatchRecord, say: CsvSay): readonly Cell[] =>
  BATCH_COLUMNS.map((column) => BATCH[column](record, say));

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
