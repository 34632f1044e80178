import { expect, test } from "vitest";
import { recordOf } from "../../../core/logbook/record.ts";
import { RECORD_SHAPE } from "../../../core/logbook/record-shape.ts";
import { madeWhole, started } from "../../support/world/play-run.ts";

const MADE = Date.parse("2025-11-25T10:00:00Z");

/** What a record says, field by field; lists by what their entries say. */
function pathsOf(value: unknown, at = ""): readonly string[] {
  if (Array.isArray(value)) return [...new Set(value.flatMap((one) => pathsOf(one, `${at}[]`)))];
  if (typeof value !== "object" || value === null) return [at];
  return Object.entries(value).flatMap(([key, inner]) => pathsOf(inner, `${at}.${key}`));
}

test("a record that says something else has another version", () => {
  const { run } = madeWhole(started("a", "PB-2511", MADE), {
    yield: 3700,
    topUp: 450,
    useBy: MADE,
  });
  const says = { shape: RECORD_SHAPE, says: pathsOf(recordOf(run)).toSorted() };
  // Changed on purpose? Raise RECORD_SHAPE first, then update this picture.
  expect(says).toMatchInlineSnapshot(`
    {
      "says": [
        ".actual.acid",
        ".actual.ratio",
        ".actual.strength",
        ".actual.sugar",
        ".batch",
        ".bottled.at",
        ".bottled.bottles[].count",
        ".bottled.bottles[].size",
        ".bottled.useBy",
        ".cleared.passes",
        ".cleared.took",
        ".cleared.waits.check-clear",
        ".cleared.waits.first-pass",
        ".demo",
        ".ending.at",
        ".ending.how",
        ".ingredients[]",
        ".made.curdKept",
        ".made.punch.acid",
        ".made.punch.strength",
        ".made.punch.sugar",
        ".name",
        ".notes",
        ".passes",
        ".photos",
        ".planned.acid",
        ".planned.ratio",
        ".planned.strength",
        ".planned.sugar",
        ".pour",
        ".procedureId",
        ".runId",
        ".size.bottles",
        ".size.by",
        ".size.size",
        ".specId",
        ".startedAt",
        ".stock.bottledMl",
        ".stock.leftMl",
        ".stock.overMl",
        ".topUp.planned",
        ".topUp.poured",
        ".wash.dairy",
        ".wash.filters",
        ".wash.milkMl",
        ".wash.order",
        ".wash.punchMl",
        ".wash.shape",
        ".work.bottle.took",
        ".work.bottle.visits",
        ".work.build.took",
        ".work.build.visits",
        ".work.drip.took",
        ".work.drip.visits",
        ".work.filter.took",
        ".work.filter.visits",
        ".work.label.took",
        ".work.label.visits",
        ".work.milk.took",
        ".work.milk.visits",
        ".work.pass.took",
        ".work.pass.visits",
        ".work.pour.took",
        ".work.pour.visits",
        ".work.re-pour.took",
        ".work.re-pour.visits",
        ".work.rest.took",
        ".work.rest.visits",
        ".work.top-up.took",
        ".work.top-up.visits",
        ".work.yield.took",
        ".work.yield.visits",
        ".yielded.expectedMl",
        ".yielded.expectedShare",
        ".yielded.ml",
        ".yielded.poured",
        ".yielded.share",
      ],
      "shape": 4,
    }
  `);
});
