import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { expect, test } from "vitest";
import {
  BATCH_COLUMNS,
  batchCells,
  type Cell,
  CSV_MARK,
  type CsvSay,
  csvRow,
  READING_COLUMNS,
  readingRows,
} from "../../../core/logbook/csv.ts";
import { recordOf } from "../../../core/logbook/record.ts";
import { madeWhole, started } from "../../support/play-run.ts";

/** A reader of somebody else's, strict as RFC 4180 is. */
const read = (table: string): string[][] =>
  parse(table, { bom: true, record_delimiter: "\r\n", relax_column_count: false });

const words = fc.oneof(
  fc.string({ unit: "binary" }),
  fc.string({
    unit: fc.constantFrom('"', ",", "\r", "\n", "=", "+", "-", "@", "\t", "a", " ", "'"),
  }),
);
const figures = fc.oneof(
  fc.integer(),
  fc.integer({ min: -1_000_000_000, max: 1_000_000_000 }).map((whole) => whole / 1000),
);
const cell: fc.Arbitrary<Cell> = fc.oneof(words, figures, fc.constant(undefined));
const table = fc.integer({ min: 1, max: 6 }).chain((width) =>
  fc.array(fc.array(cell, { minLength: width, maxLength: width }), {
    minLength: 1,
    maxLength: 6,
  }),
);

/** What the app does with a text that begins as a formula would. */
const begins = /^[=+\-@\t\r\n\0＝＋－＠]/u;
const asRead = (one: Cell): string =>
  typeof one === "string" && begins.test(one) ? `'${one}` : String(one ?? "");

test("another reader gets every cell back, whatever it holds", () => {
  fc.assert(
    fc.property(table, (rows) => {
      // A single empty cell is an empty line, which readers pass over.
      fc.pre(rows.every((row) => row.length > 1 || (row[0] ?? "") !== ""));
      const text = CSV_MARK + rows.map(csvRow).join("");
      expect(read(text)).toEqual(rows.map((row) => row.map(asRead)));
    }),
    { seed: 2511, numRuns: 500 },
  );
});

test("no cell that is read begins as a formula does, unless it is a figure", () => {
  fc.assert(
    fc.property(words, (text) => {
      const [row] = read(csvRow(["first", text]));
      expect(row?.[1] ?? "").not.toMatch(begins);
    }),
    { seed: 2511, numRuns: 500 },
  );
});

test.each<[string, readonly Cell[], string]>([
  // RFC 4180, section 2, points 5 to 7: quotes round line ends, quotes and commas; quotes doubled.
  ["RFC 4180, 2.5", ["aaa", "b b", "ccc"], "aaa,b b,ccc\r\n"],
  ["RFC 4180, 2.6", ["aaa", "b \r\nbb", "c,c"], 'aaa,"b \r\nbb","c,c"\r\n'],
  ["RFC 4180, 2.7", ["aaa", 'b"bb', "ccc"], 'aaa,"b""bb",ccc\r\n'],
  ["a formula", ['=HYPERLINK("x")', "+1", "-1", "@a"], '"\'=HYPERLINK(""x"")",\'+1,\'-1,\'@a\r\n'],
  ["a tab and a return", ["\t=1", "\r=1"], '"\'\t=1","\'\r=1"\r\n'.replace('"\'\t=1"', "'\t=1")],
  ["figures", [-5, 0.1 + 0.2, 1e21, 0, -0.0000001], "-5,0.3,1e+21,0,-1e-7\r\n"],
  ["what is no figure", [Number.NaN, Number.POSITIVE_INFINITY, undefined, ""], ",,,\r\n"],
  ["spaces at the ends", [" a", "b "], '" a","b "\r\n'],
  ["an apostrophe of somebody's own", ["'tis"], "'tis\r\n"],
])("%s", (_, cells, row) => {
  expect(csvRow(cells)).toBe(row);
});

const AT = Date.parse("2025-11-25T10:00:00Z");
const say: CsvSay = {
  time: (at) => new Date(at).toISOString(),
  word: (word) => `<${word}>`,
  step: ({ id }) => id,
};
const whole = madeWhole(started("run-a", "PB-2511", AT), {
  yield: 3700,
  topUp: 450,
  useBy: AT + 6 * 86_400_000,
});
const cellsOf = (columns: readonly string[], cells: readonly Cell[]) =>
  Object.fromEntries(columns.map((column, at) => [column, cells[at]]));

test("a batch that was made from start to label, as a row", () => {
  const record = recordOf(whole.run);
  const cells = cellsOf(BATCH_COLUMNS, batchCells(record, say));
  expect(Object.keys(cells)).toHaveLength(batchCells(record, say).length);
  expect(cells).toMatchObject({
    batch: "PB-2511",
    spec: "Pear Beacon",
    started: "2025-11-25T10:00:00.000Z",
    how: "<finished>",
    reason: undefined,
    yield: 3700,
    poured: record.yielded?.poured,
    topUp: 450,
    bottles: 6,
    bottledMl: 4500,
    useBy: "2025-12-01T10:00:00.000Z",
    passes: 1,
  });
  // Yield as a share of what was poured in: 3700 ml of it, in per cent.
  expect(cells.share).toBeCloseTo((3700 / (record.yielded?.poured ?? 0)) * 100, 9);
  expect(cells.strength).toBeCloseTo(record.actual.strength * 100, 9);
});

test("a batch that has just begun has empty cells, not wrong ones", () => {
  const cells = cellsOf(BATCH_COLUMNS, batchCells(recordOf(started("run-b", "B", AT).run), say));
  expect(cells).toMatchObject({
    ended: undefined,
    how: undefined,
    yield: undefined,
    share: undefined,
  });
  expect(cells).toMatchObject({ bottled: undefined, bottles: undefined, useBy: undefined });
});

test("a batch that was given up says why, and a formula for a reason stays a text", () => {
  const given = started("run-c", "C", AT).then({ type: "abandon", reason: "=1+1" });
  const cells = batchCells(recordOf(given.run), say);
  expect(cellsOf(BATCH_COLUMNS, cells)).toMatchObject({ how: "<abandoned>", reason: "=1+1" });
  expect(csvRow(cells)).toContain(",'=1+1,");
});

test("everything that was measured or seen stands in a row, in the order it happened", () => {
  const rows = readingRows(whole.run, say).map((cells) => cellsOf(READING_COLUMNS, cells));
  expect(rows.map(({ what, value, look }) => [what, value ?? look])).toEqual([
    ["<milk>", whole.run.plan.milk?.ml],
    ["<poured-back>", 400],
    ["<seen>", "<clear>"],
    ["<yield>", 3700],
    ["<top-up>", 450],
  ]);
  expect(rows.at(3)).toMatchObject({
    batch: "PB-2511",
    spec: "Pear Beacon",
    step: "yield",
    round: 1,
    unit: "ml",
    gross: undefined,
    phone: "phone-a",
  });
});

test("what was weighed says so, and what was taken back is not there", () => {
  const begun = started("run-d", "D", AT).finish({}, 20);
  const visit = begun.run.visits.at(-1)?.key ?? "";
  const noted = begun.then({
    type: "log-reading",
    visit,
    what: "temperature",
    value: 4,
    unit: "degC",
  });
  expect(readingRows(noted.run, say)).toHaveLength(1);
  const act = noted.events.at(-1)?.act ?? "";
  expect(readingRows(noted.then({ type: "undo", act }).run, say)).toEqual([]);
  const weighed = { gross: 900, tare: 300 };
  const run = { ...noted.run, readings: noted.run.readings.map((one) => ({ ...one, weighed })) };
  const [row = []] = readingRows(run, say);
  expect(cellsOf(READING_COLUMNS, row)).toMatchObject({ gross: 900, tare: 300 });
});
