import { MINUTE } from "../quantity/time-units-table.ts";
import { bottlesMl } from "../run/stock.ts";
import type { Cell } from "./csv.ts";
import type { CsvSay } from "./csv-say.ts";
import type { BatchRecord } from "./record.ts";

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
