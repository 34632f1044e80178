import type { Cell } from "../../../core/logbook/csv.ts";
import type { CsvSay } from "../../../core/logbook/csv-say.ts";

/** Times at Greenwich, our own words in brackets, steps by their ids. */
export const csvSay: CsvSay = {
  time: (at) => new Date(at).toISOString(),
  word: (word) => `<${word}>`,
  step: ({ id }) => id,
};

/** A row's cells by the name of their column. */
export const cellsOf = (
  columns: readonly string[],
  cells: readonly Cell[],
): Readonly<Record<string, Cell>> =>
  Object.fromEntries(columns.map((column, at) => [column, cells[at]]));
