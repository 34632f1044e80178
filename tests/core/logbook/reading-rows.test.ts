import { expect, test } from "vitest";
import { READING_COLUMNS, readingRows } from "../../../core/logbook/reading-rows.ts";
import { cellsOf, csvSay as say } from "../../support/look/csv-say.ts";
import { madeWhole, started } from "../../support/world/play-run.ts";

const AT = Date.parse("2025-11-25T10:00:00Z");
const whole = madeWhole(started("run-a", "PB-2511", AT), {
  yield: 3700,
  topUp: 450,
  useBy: AT + 6 * 86_400_000,
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
