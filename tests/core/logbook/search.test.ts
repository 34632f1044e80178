import fc from "fast-check";
import { expect, test } from "vitest";
import { type EndedBatch, logbookOf } from "../../../core/logbook/logbook.ts";
import { recordOf } from "../../../core/logbook/record.ts";
import {
  facetsOf,
  searchLogbook,
  searchTextOf,
  summaryOf,
  type Wanted,
  yieldBandOf,
} from "../../../core/logbook/search.ts";
import { plainLetters } from "../../../core/quantity/plain-letters.ts";
import { demoSpec, madeWhole, planned, started } from "../../support/world/play-run.ts";

const DAY = 86_400_000;
const MADE = Date.parse("2025-11-25T10:00:00Z");
const useBy = MADE + 9 * DAY;
const boat = planned(demoSpec("Boatyard Flip-Side"));
const expected = started("x", "x", MADE).run.plan.yield?.expected ?? 0;

const low = madeWhole(started("low", "PB-2511", MADE), {
  yield: Math.round(expected * 0.9),
  topUp: 450,
  useBy,
})
  .then({ type: "add-note", text: "Thé brûlé, à refaire" })
  .then({ type: "add-tag", tag: "Été" })
  .then({ type: "note-taste", scores: { acid: 9 }, words: ["sharp"], by: "AB" })
  .then({ type: "give-verdict", verdict: "poor", repeat: "no", text: "too sharp" });
const near = madeWhole(started("near", "PB-2611", MADE + DAY), {
  yield: Math.round(expected),
  topUp: 450,
  useBy,
}).then({ type: "give-verdict", verdict: "good", repeat: "yes", text: "" });
const high = madeWhole(started("high", "BFS-2711", MADE + 2 * DAY, boat), {
  yield: Math.round((boat.yield?.expected ?? 0) * 1.06),
  topUp: 300,
  useBy,
});
const given = started("given", "PB-2811", MADE + 3 * DAY).then({
  type: "abandon",
  reason: "Milk went off",
});
const all = logbookOf([low, near, high, given].map(({ run }) => recordOf(run)));
const found = (wanted: Wanted) => searchLogbook(all, wanted).map(({ runId }) => runId);

test.each<[string, Wanted, readonly string[]]>([
  ["nothing asked: all, the latest first", {}, ["given", "high", "near", "low"]],
  ["a batch code, in small letters", { text: "pb-26" }, ["near"]],
  ["a name, without its capital", { text: "boatyard" }, ["high"]],
  ["a word of a note, without its marks", { text: "the brule" }, ["low"]],
  ["a word of a note, with them", { text: "BRÛLÉ" }, ["low"]],
  ["words in any order", { text: "refaire pear" }, ["low"]],
  ["all words must be there", { text: "pear boatyard" }, []],
  ["why it was given up", { text: "went off" }, ["given"]],
  ["a tag as a word", { text: "ete" }, ["low"]],
  ["a taste", { text: "sharp" }, ["low"]],
  ["a spec", { specId: "demo-boatyard-flip-side" }, ["high"]],
  ["a tag", { tag: "Été" }, ["low"]],
  ["a verdict", { verdict: "good" }, ["near"]],
  ["whether to repeat", { repeat: "no" }, ["low"]],
  ["a low yield", { yielded: "low" }, ["low"]],
  ["as expected", { yielded: "near" }, ["near"]],
  ["a high yield", { yielded: "high" }, ["high"]],
  ["from a day on", { from: MADE + 2 * DAY }, ["given", "high"]],
  ["until a day", { to: MADE + 2 * DAY }, ["near", "low"]],
  ["between two", { from: MADE + DAY, to: MADE + 2 * DAY }, ["near"]],
  ["all of it must fit", { verdict: "good", yielded: "low" }, []],
])("%s", (_, wanted, ids) => {
  expect(found(wanted)).toEqual(ids);
});

test("an ingredient is found by its name, the milk among them", () => {
  const milk = low.run.plan.milk?.name ?? "none";
  expect(found({ ingredient: milk })).toContain("low");
  expect(found({ ingredient: "Unheard-of root" })).toEqual([]);
});

test("the text of a batch is worked out once", () => {
  const [first] = all;
  if (first === undefined) throw new RangeError("there are batches");
  expect(searchTextOf(first)).toBe(searchTextOf(first));
  expect(searchTextOf(first)).toContain("milk went off");
});

test("a summary: how many, and the median of what came through", () => {
  const shares = all.flatMap(({ yielded }) => yielded?.share ?? []);
  expect(shares).toHaveLength(3);
  const middle = shares.toSorted((a, b) => a - b)[1];
  expect(summaryOf(all)).toEqual({ batches: 4, share: { median: middle, of: 3 } });
  expect(summaryOf([])).toEqual({ batches: 0 });
  expect(summaryOf(all.filter(({ runId }) => runId === "given"))).toEqual({ batches: 1 });
});

test("what there is to choose from, each once, in the order of its letters", () => {
  const { specs, ingredients, tags } = facetsOf(all);
  expect(specs.map(({ name }) => name)).toEqual(["Boatyard Flip-Side", "Pear Beacon"]);
  expect(tags).toEqual(["Été"]);
  expect(new Set(ingredients).size).toBe(ingredients.length);
  expect(ingredients.map(plainLetters)).toEqual(ingredients.map(plainLetters).toSorted());
});

test("property: what is found is a part of all, in their order, and more asked finds no more", () => {
  const wanted = fc.record(
    {
      text: fc.constantFrom("pear", "pb", "e", " ", "zz"),
      verdict: fc.constantFrom("good", "fair", "poor"),
      yielded: fc.constantFrom("low", "near", "high"),
      from: fc.integer({ min: MADE, max: MADE + 4 * DAY }),
    },
    { requiredKeys: [] },
  );
  const ids = (some: readonly EndedBatch[]) => some.map(({ runId }) => runId);
  fc.assert(
    fc.property(wanted, fc.constantFrom("low", "near", "high"), (asked, band) => {
      const some = searchLogbook(all, asked);
      expect(ids(all).filter((id) => ids(some).includes(id))).toEqual(ids(some));
      const fewer = searchLogbook(some, { yielded: band });
      expect(fewer.every((one) => yieldBandOf(one) === band)).toBe(true);
      expect(fewer.length).toBeLessThanOrEqual(some.length);
    }),
  );
});
