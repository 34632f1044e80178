import { afterEach, expect, test } from "vitest";
import { goneSince, shelfOf as shelfOfRecords } from "../../../core/board/shelf.ts";
import { recordOf } from "../../../core/logbook/record.ts";
import type { Run } from "../../../core/run/run.ts";
import { dripped, madeWhole, started } from "../../support/world/play-run.ts";

const shelfOf = (runs: readonly Run[], now: number) => shelfOfRecords(runs.map(recordOf), now);
const own = process.env.TZ;
afterEach(() => {
  if (own === undefined) delete process.env.TZ;
  else process.env.TZ = own;
});

const MADE = Date.parse("2025-10-20T10:00:00Z");
const bottled = (id: string, useBy: string, bottles = [{ count: 6, size: 750 }]) =>
  madeWhole(started(id, id, MADE), { yield: 3700, topUp: 450, useBy: Date.parse(useBy), bottles })
    .run;

// Calendar days across the end of summer time in London on 2025-10-26 (IANA database).
test.each([
  ["2025-10-20T20:00:00Z", 7, "in-date"],
  ["2025-10-25T22:59:00Z", 2, "in-date"],
  ["2025-10-25T23:30:00Z", 1, "in-date"],
  ["2025-10-26T23:59:00Z", 1, "in-date"],
  ["2025-10-27T00:00:00Z", 0, "last-day"],
  ["2025-10-27T23:59:59.999Z", 0, "last-day"],
  ["2025-10-28T00:00:00Z", -1, "past"],
  ["2025-11-03T12:00:00Z", -7, "past"],
])("at %s, %i days are left: %s", (now, daysLeft, keeping) => {
  process.env.TZ = "Europe/London";
  const run = bottled("a", "2025-10-27T23:59:59.999Z");
  expect(shelfOf([run], Date.parse(now))).toMatchObject([{ daysLeft, keeping }]);
});

test("a use-by set for noon is past after noon", () => {
  const run = bottled("a", "2025-10-27T12:00:00Z");
  const at = (now: string) => shelfOf([run], Date.parse(now))[0]?.keeping;
  expect(at("2025-10-27T12:00:00Z")).toBe("last-day");
  expect(at("2025-10-27T12:00:00.001Z")).toBe("past");
});

test("the earliest use-by stands first, what is not bottled not at all", () => {
  const late = bottled("late", "2025-11-02T23:59:59Z");
  const soon = bottled("soon", "2025-10-24T23:59:59Z");
  const open = dripped(started("open", "open", MADE)).run;
  expect(shelfOf([late, open, soon], MADE).map(({ runId }) => runId)).toEqual(["soon", "late"]);
  expect(shelfOf([], MADE)).toEqual([]);
});

test("of two with one use-by the one that was bottled first stands first", () => {
  const useBy = "2025-10-24T23:59:59Z";
  const [early, late] = [bottled("a", useBy), bottled("b", useBy)];
  const [bottling] = late.bottlings;
  if (bottling === undefined) throw new RangeError("it was bottled");
  const after = { ...late, bottlings: [{ ...bottling, at: bottling.at + 60_000 }] };
  for (const runs of [
    [early, after],
    [after, early],
  ]) {
    expect(shelfOf(runs, MADE).map(({ runId }) => runId)).toEqual(["a", "b"]);
  }
});

test("counts bottles of every size", () => {
  const sizes = [
    { count: 4, size: 750 },
    { count: 3, size: 200 },
  ];
  const run = bottled("a", "2025-10-27T23:59:59Z", sizes);
  expect(shelfOf([run], MADE)).toMatchObject([{ bottles: sizes, ml: 3600 }]);
});

test("bottles of a batch given up afterwards are still on the shelf", () => {
  const begun = started("a", "a", MADE);
  const { run } = dripped(begun)
    .finish({ answer: { of: "yield", ml: 3700 } })
    .finish({ answer: { of: "top-up", ml: 450 } })
    .finish({ answer: { of: "bottled", bottles: [{ count: 5, size: 750 }], useBy: MADE + 1 } })
    .then({ type: "abandon", reason: "no labels left" });
  expect(shelfOf([run], MADE)).toHaveLength(1);
});

test("what was poured is no longer there; what was poured too much is said", () => {
  const batch = madeWhole(started("a", "a", MADE), {
    yield: 3700,
    topUp: 450,
    useBy: MADE + 9 * 86_400_000,
  });
  const some = batch.then({ type: "pour-stock", unit: "bottles", count: 2 });
  expect(shelfOf([some.run], MADE)).toMatchObject([{ ml: 4500, leftMl: 3000, overMl: 0 }]);
  const over = some.then({ type: "pour-stock", unit: "bottles", count: 5 });
  expect(shelfOf([over.run], MADE)).toMatchObject([{ ml: 4500, leftMl: 0, overMl: 750 }]);
});

test("spent and discarded batches leave the shelf, and are told of for a while", () => {
  const end = (id: string, how: "spent" | "discarded", minutes: number) =>
    madeWhole(started(id, id, MADE), {
      yield: 3700,
      topUp: 450,
      useBy: MADE + 9 * 86_400_000,
    }).then({ type: "end-stock", how, reason: how === "spent" ? "" : "off" }, minutes);
  const [first, second] = [end("first", "spent", 10), end("second", "discarded", 20)];
  const records = [first, second].map(({ run }) => recordOf(run));
  expect(shelfOf([first.run, second.run], MADE)).toEqual([]);
  expect(goneSince(records, 0).map(({ runId }) => runId)).toEqual(["second", "first"]);
  const at = second.run.stockEnded[0]?.at ?? 0;
  expect(goneSince(records, at)).toMatchObject([
    { runId: "second", ended: { how: "discarded", reason: "off" } },
  ]);
  expect(goneSince(records, at + 1)).toEqual([]);
  const back = second.then({ type: "undo", act: second.events.at(-1)?.act ?? "" });
  expect(shelfOf([back.run], MADE)).toHaveLength(1);
});
