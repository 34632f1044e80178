import { expect, test } from "vitest";
import { BATCH_COLUMNS, batchCells } from "../../../core/logbook/batch-rows.ts";
import { csvRow } from "../../../core/logbook/csv.ts";
import { recordOf } from "../../../core/logbook/record.ts";
import { cellsOf, csvSay as say } from "../../support/look/csv-say.ts";
import { madeWhole, started } from "../../support/world/play-run.ts";

const AT = Date.parse("2025-11-25T10:00:00Z");
const whole = madeWhole(started("run-a", "PB-2511", AT), {
  yield: 3700,
  topUp: 450,
  useBy: AT + 6 * 86_400_000,
});

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
