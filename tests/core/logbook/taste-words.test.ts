import { expect, test } from "vitest";
import { tasting } from "../../../app/words/en/tasting.ts";
import { TASTE_WORDS } from "../../../core/logbook/taste-words.ts";
import { draftSchema } from "../../../core/run/event.ts";

test("every word can be chosen at once and kept, and no two look alike", () => {
  const draft = { type: "taste.noted", scores: {}, words: [...TASTE_WORDS], by: "AB" };
  expect(draftSchema.safeParse(draft).success).toBe(true);
  const shown = TASTE_WORDS.map((word) => tasting.codes[word]);
  expect(new Set(shown).size).toBe(TASTE_WORDS.length);
});
