import { expect, test } from "vitest";
import {
  type AfterOrder,
  afterwards,
  asInitials,
  asTag,
  isAfterOrder,
} from "../../../core/run/afterwards.ts";
import { dripped, madeWhole, started } from "../../support/play-run.ts";

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
