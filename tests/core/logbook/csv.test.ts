import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { expect, test } from "vitest";
import { type Cell, CSV_MARK, csvRow } from "../../../core/logbook/csv.ts";

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
