import { expect, test } from "vitest";
import { tastingOf } from "../../../core/logbook/tasting.ts";
import type { Scores } from "../../../core/run/taste.ts";
import { type Played, started } from "../../support/world/play-run.ts";

const begun = started("a", "PB-2511", Date.parse("2025-11-25T10:00:00Z"));
const taste = (from: Played, by: string, scores: Scores, words: readonly string[] = []) =>
  from.then({ type: "note-taste", by, scores, words });

test("nothing before anybody tastes", () => {
  expect(tastingOf(begun.run)).toBeUndefined();
});

test("means over those who scored it; what nobody scored has none", () => {
  const two = taste(taste(begun, "AB", { clarity: 9, acid: 4 }), "CD", { clarity: 6 });
  expect(tastingOf(two.run)?.means).toEqual({ clarity: 7.5, acid: 4 });
  expect(tastingOf(two.run)?.tasters.map(({ by }) => by)).toEqual(["CD", "AB"]);
});

test("of each taster the latest tasting counts, whole", () => {
  const three = taste(
    taste(taste(begun, "AB", { clarity: 2, acid: 8 }, ["flat"]), "CD", { clarity: 6 }),
    "ab",
    { clarity: 4 },
    ["clean"],
  );
  expect(tastingOf(three.run)).toMatchObject({
    means: { clarity: 5 },
    words: [{ word: "clean", tasters: 1 }],
  });
  expect(tastingOf(three.run)?.means.acid).toBeUndefined();
  // Taken back, the earlier one counts again.
  const back = three.then({ type: "undo", act: three.events.at(-1)?.act ?? "" });
  expect(tastingOf(back.run)?.means).toEqual({ clarity: 4, acid: 8 });
});

test("words are counted by taster, the most said first", () => {
  const three = taste(
    taste(taste(begun, "AB", {}, ["dry", "silky"]), "CD", {}, ["silky"]),
    "EF",
    {},
    ["like tea", "silky"],
  );
  expect(tastingOf(three.run)?.words[0]).toEqual({ word: "silky", tasters: 3 });
  expect(tastingOf(three.run)?.words).toHaveLength(3);
});
