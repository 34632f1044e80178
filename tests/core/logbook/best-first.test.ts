import fc from "fast-check";
import { expect, test } from "vitest";
import { bestFirst, canBeRanked } from "../../../core/logbook/best-first.ts";
import { type EndedBatch, logbookOf } from "../../../core/logbook/logbook.ts";
import { recordOf } from "../../../core/logbook/record.ts";
import type { Scores } from "../../../core/run/taste.ts";
import { madeWhole, started } from "../../support/world/play-run.ts";

const DAY = 86_400_000;
const MADE = Date.parse("2025-11-25T10:00:00Z");

const plain = (id: string, day: number) =>
  madeWhole(started(id, id, MADE + day * DAY), { yield: 3600, topUp: 450, useBy: MADE + 30 * DAY });
const judged = (id: string, day: number, verdict: "good" | "fair" | "poor", repeat: "yes" | "no") =>
  plain(id, day).then({ type: "give-verdict", verdict, repeat, text: "" });
const tasted = (id: string, day: number, scores: Scores) =>
  plain(id, day).then({ type: "note-taste", scores, words: [], by: "AB" });

const rowsOf = (...runs: readonly ReturnType<typeof plain>[]): readonly EndedBatch[] =>
  logbookOf(runs.map(({ run }) => recordOf(run)));
const order = (rows: readonly EndedBatch[]) => bestFirst(rows).map(({ runId }) => runId);

test("the verdict comes first, then whether it would be made again; the unjudged above the poor", () => {
  const rows = rowsOf(
    judged("poor", 5, "poor", "no"),
    plain("nobody-said", 4),
    judged("fair", 3, "fair", "yes"),
    judged("good-once", 2, "good", "no"),
    judged("good", 1, "good", "yes"),
  );
  expect(order(rows)).toEqual(["good", "good-once", "fair", "nobody-said", "poor"]);
});

test("of those judged alike the better tasted comes first, and sourness is no merit", () => {
  const rows = rowsOf(
    tasted("dull", 3, { clarity: 4, finish: 4, acid: 10 }),
    tasted("bright", 2, { clarity: 9, finish: 8, acid: 2 }),
    plain("untasted", 4),
  );
  expect(order(rows)).toEqual(["bright", "dull", "untasted"]);
});

test("of equals the latest comes first", () => {
  expect(order(rowsOf(plain("old", 1), plain("new", 2)))).toEqual(["new", "old"]);
});

test("nothing is lost or made up, and the order does not hang on where it began", () => {
  const rows = rowsOf(
    judged("a", 1, "good", "yes"),
    judged("b", 2, "fair", "no"),
    tasted("c", 3, { aroma: 7 }),
    plain("d", 4),
    judged("e", 5, "poor", "yes"),
  );
  const once = order(rows);
  const shuffled = fc.shuffledSubarray([...rows], { minLength: rows.length });
  fc.assert(
    fc.property(shuffled, (mixed) => {
      expect(order(mixed)).toEqual(once);
    }),
  );
});

test("batches of which nobody said anything cannot be ranked", () => {
  expect(canBeRanked(rowsOf(plain("a", 1)))).toBe(false);
  expect(canBeRanked(rowsOf(plain("a", 1), judged("b", 2, "poor", "no")))).toBe(true);
  expect(canBeRanked(rowsOf(tasted("c", 1, { aroma: 3 })))).toBe(true);
});
