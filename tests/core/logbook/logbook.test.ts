import { expect, test } from "vitest";
import { logbookOf as ofRecords } from "../../../core/logbook/logbook.ts";
import { recordOf } from "../../../core/logbook/record.ts";
import type { Run } from "../../../core/run/run.ts";
import { dripped, madeWhole, started } from "../../support/world/play-run.ts";

const logbookOf = (runs: readonly Run[]) => ofRecords(runs.map(recordOf));
const DAY = 86_400_000;
const MADE = Date.parse("2025-11-25T10:00:00Z");
const measured = { yield: 3700, topUp: 450, useBy: MADE + 6 * DAY };

test("a finished batch with its yield, passes and end", () => {
  const { run } = madeWhole(started("a", "PB-2511", MADE), measured);
  expect(logbookOf([run])).toMatchObject([
    {
      runId: "a",
      name: "Pear Beacon",
      batch: "PB-2511",
      startedAt: MADE,
      ending: { how: "finished", at: MADE + (20 + 2 + 5 + 60 + 4 + 2 + 3 + 3 + 340 + 35) * 60_000 },
      yielded: { ml: 3700 },
      passes: 1,
    },
  ]);
});

test("a batch given up keeps the reason and has no yield", () => {
  const { run } = started("a", "a", MADE).then({ type: "abandon", reason: "Milk went off" });
  const [line] = logbookOf([run]);
  expect(line).toMatchObject({ ending: { how: "abandoned", reason: "Milk went off" }, passes: 0 });
  expect(line?.yielded).toBeUndefined();
});

test("the latest ended stands first, a batch being made not at all", () => {
  const old = madeWhole(started("old", "old", MADE), measured).run;
  const late = madeWhole(started("late", "late", MADE + DAY), measured).run;
  const open = dripped(started("open", "open", MADE)).run;
  // Started first, given up last: the end counts.
  const dragged = started("dragged", "dragged", MADE - DAY).then(
    { type: "abandon", reason: "" },
    5 * 24 * 60,
  ).run;
  expect(logbookOf([old, open, dragged, late]).map(({ runId }) => runId)).toEqual([
    "dragged",
    "late",
    "old",
  ]);
});
