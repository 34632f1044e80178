import { afterEach, expect, test } from "vitest";
import { shelfOf } from "../../../core/board/shelf.ts";
import { dripped, madeWhole, started } from "../../support/play-run.ts";

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
