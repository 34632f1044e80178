import { expect, test } from "vitest";
import {
  type AfterOrder,
  afterwards,
  asInitials,
  asTag,
  isAfterOrder,
} from "../../../core/run/afterwards.ts";
import { dripped, madeWhole, started } from "../../support/world/play-run.ts";

const MADE = Date.parse("2025-11-25T10:00:00Z");
const begun = started("a", "PB-2511", MADE);
const { run } = madeWhole(begun, { yield: 3700, topUp: 450, useBy: MADE + 1 });
const drafts = (order: AfterOrder, of = run) => {
  const decision = afterwards(of, order);
  return decision.ok ? decision.value : decision.refusal;
};

test("a taster is one person however the initials are typed; words are said once", () => {
  expect(
    drafts({
      type: "note-taste",
      scores: { acid: 6 },
      words: ["bright", " bright ", "  like   tea "],
      by: " ab",
    }),
  ).toEqual([
    { type: "taste.noted", scores: { acid: 6 }, words: ["bright", "like tea"], by: "AB" },
  ]);
  expect(asInitials(" jk ")).toBe("JK");
  expect(asTag(" a \n b ")).toBe("a b");
});

const taste = { type: "note-taste", scores: {}, words: [], by: "AB" } as const;

test.each<[AfterOrder, string]>([
  [taste, "taste-empty"],
  [{ ...taste, scores: { acid: undefined }, words: [" "] }, "taste-empty"],
  [{ ...taste, words: ["bright"], by: " " }, "taster-missing"],
  [{ type: "add-tag", tag: "  " }, "tag-empty"],
  [{ type: "remove-tag", tag: "never put on" }, "order-does-not-fit"],
  [{ type: "remove-photo", photo: "none" }, "order-does-not-fit"],
  [{ type: "pour-stock", unit: "ml", count: 0 }, "pour-empty"],
  [{ type: "pour-stock", unit: "ml", count: Number.NaN }, "reading-not-a-number"],
])("%j: %s", (order, refusal) => {
  expect(drafts(order)).toBe(refusal);
});

test("a word alone is a tasting, and so is a score alone", () => {
  expect(drafts({ ...taste, words: ["flat"] })).toMatchObject([{ words: ["flat"] }]);
  expect(drafts({ ...taste, scores: { clarity: 0 } })).toMatchObject([{ scores: { clarity: 0 } }]);
});

test("a tag that stands stays as it was first written", () => {
  const tagged = madeWhole(begun, { yield: 3700, topUp: 450, useBy: MADE + 1 })
    .then({ type: "add-tag", tag: "Late  pear" })
    .then({ type: "add-tag", tag: "other" });
  expect(drafts({ type: "add-tag", tag: "LATE pear " }, tagged.run)).toEqual([
    { type: "tag.added", tag: "Late pear" },
  ]);
  expect(drafts({ type: "remove-tag", tag: "late pear" }, tagged.run)).toEqual([
    { type: "tag.removed", tag: "Late pear" },
  ]);
});

test("of two measured yields the one that was named is settled on, with what its scale showed", () => {
  const [one] = run.yields;
  if (one === undefined) throw new RangeError("a yield was measured");
  const weighed = { gross: 4600, tare: 800 };
  const theirs = { ...one, id: "b", act: "b", device: "phone-b", ml: 3650, weighed };
  const two = { ...run, yields: [one, theirs] };
  expect(drafts({ type: "settle-yield", ml: 3650 }, two)).toEqual([
    { type: "yield.logged", visit: one.visit, ml: 3650, weighed, settles: true },
  ]);
  expect(drafts({ type: "settle-yield", ml: 3700 }, two)).toMatchObject([{ ml: 3700 }]);
  expect(drafts({ type: "settle-yield", ml: 3600 }, two)).toBe("order-does-not-fit");
});

// By hand: a serve of the demo spec as its spec says, a bottle of 750 ml.
test.each([
  ["serves", 4, 4 * run.plan.spec.serve.pour],
  ["bottles", 1.5, 1125],
  ["ml", 333, 333],
] as const)("poured out in %s is kept as counted and in ml", (unit, count, ml) => {
  expect(drafts({ type: "pour-stock", unit, count })).toEqual([
    { type: "stock.poured", ml, count, unit },
  ]);
});

test("more than there was is kept all the same: the bottles know better than the log", () => {
  expect(drafts({ type: "pour-stock", unit: "bottles", count: 60 })).toEqual([
    { type: "stock.poured", ml: 45_000, count: 60, unit: "bottles" },
  ]);
});

test.each<[AfterOrder, string]>([
  [{ type: "pour-stock", unit: "ml", count: 10 }, "not-bottled"],
  [{ type: "end-stock", how: "spent", reason: "" }, "not-bottled"],
  [{ type: "settle-yield", ml: 3700 }, "order-does-not-fit"],
])("%j before there is any: %s", (order, refusal) => {
  expect(drafts(order, dripped(begun).run)).toBe(refusal);
});

test("these orders, and no others, speak of what came of a batch", () => {
  expect(isAfterOrder({ type: "settle-yield", ml: 1 })).toBe(true);
  expect(isAfterOrder({ type: "pause" })).toBe(false);
  expect(isAfterOrder({ type: "__proto__" })).toBe(false);
});
