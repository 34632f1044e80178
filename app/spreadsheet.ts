import { BATCH_COLUMNS, batchCells } from "../core/logbook/batch-rows.ts";
import { CSV_MARK, csvRow } from "../core/logbook/csv.ts";
import type { CsvSay } from "../core/logbook/csv-say.ts";
import { READING_COLUMNS, readingRows } from "../core/logbook/reading-rows.ts";
import type { Result } from "../core/quantity/result.ts";
import { foldRun } from "../core/run/fold.ts";
import { longWork, type Stopped, type Watch } from "./commands-backup.ts";
import { atDesk } from "./desk.ts";
import { isoStamp } from "./local-time.ts";
import { everyRecord } from "./reading.ts";
import { records } from "./state.ts";
import { Pace } from "./storage/backup/pace.ts";
import { readRun } from "./storage/run-log.ts";
import { sayLater } from "./words/say-later.ts";
import { stepTitle } from "./words/step-title.ts";

/** A table as the text of a file, in parts. */
export type Table = Result<Blob, Stopped>;

const say: CsvSay = {
  time: (at) => isoStamp(at),
  word: (word) => sayLater.kit.table.words[word],
  step: stepTitle,
};

/** Every batch, the earliest first. */
async function batchesByStart() {
  await everyRecord();
  return records.value.toSorted((a, b) => a.startedAt - b.startedAt);
}

const tableOf = (rows: readonly string[]): Blob =>
  new Blob([CSV_MARK, ...rows], { type: "text/csv" });

/** Every batch there is, as a table for a spreadsheet. */
export const batchesTable = (watch: Watch): Promise<Table> =>
  longWork(watch, async (work) => {
    const pace = new Pace(work);
    const batches = await batchesByStart();
    const heads = sayLater.kit.table.batchHeads;
    const rows = [csvRow(BATCH_COLUMNS.map((column) => heads[column]))];
    for (const record of batches) {
      rows.push(csvRow(batchCells(record, say)));
      if (pace.isDue) await pace.rest(rows.length - 1, batches.length);
    }
    return tableOf(rows);
  });

/** Everything that was measured or seen in every batch, as a table for a spreadsheet. */
export const readingsTable = (watch: Watch): Promise<Table> =>
  longWork(watch, async (work) => {
    const pace = new Pace(work);
    const batches = await batchesByStart();
    const heads = sayLater.kit.table.readingHeads;
    const rows = [csvRow(READING_COLUMNS.map((column) => heads[column]))];
    for (const [done, { runId }] of batches.entries()) {
      const run = foldRun((await readRun(atDesk().db, runId)).events);
      if (run !== undefined) rows.push(...readingRows(run, say).map(csvRow));
      if (pace.isDue) await pace.rest(done + 1, batches.length);
    }
    return tableOf(rows);
  });
