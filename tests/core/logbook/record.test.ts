import { expect, test } from "vitest";
import { recordOf } from "../../../core/logbook/record.ts";
import { RECORD_SHAPE } from "../../../core/logbook/record-shape.ts";
import { TASTE_WORDS } from "../../../core/logbook/taste-words.ts";
import { madeWhole, type Played, started } from "../../support/world/play-run.ts";

const DAY = 24 * 60;
const MADE = Date.parse("2025-11-25T10:00:00Z");
const begun = started("a", "PB-2511", MADE);
const made = madeWhole(begun, { yield: 3700, topUp: 450, useBy: MADE + 7 * 86_400_000 });

test("before anything was said of the drink there is nothing to say", () => {
  const record = recordOf(begun.run);
  expect(record).toMatchObject({ tags: [], photos: 0, notes: "", size: begun.run.plan.size });
  expect(Object.keys(record)).not.toEqual(expect.arrayContaining(["taste"]));
  for (const key of ["taste", "verdict", "wouldRepeat", "stock"])
    expect(record).not.toHaveProperty(key);
});

test("what came of a batch: means, verdict, tags, what is left, pictures, notes", () => {
  const { run } = made
    .then({ type: "note-taste", scores: { acid: 4 }, words: ["bright"], by: "AB" })
    .then({ type: "note-taste", scores: { acid: 7 }, words: [], by: "CD" })
    .then({ type: "give-verdict", verdict: "fair", repeat: "yes", text: "early" })
    .then({ type: "give-verdict", verdict: "good", repeat: "with-changes", text: "less milk" })
    .then({ type: "add-tag", tag: "summer" })
    .then({ type: "add-note", text: "tea was old" })
    .then({
      type: "add-photo",
      photo: "p",
      media: "image/jpeg",
      bytes: 9,
      width: 4,
      height: 3,
    })
    .then({ type: "pour-stock", unit: "ml", count: 500 });
  expect(recordOf(run)).toMatchObject({
    taste: { means: { acid: 5.5 }, tasters: 2, words: ["bright"] },
    verdict: "good",
    wouldRepeat: "with-changes",
    tags: ["summer"],
    photos: 1,
    notes: "tea was old less milk",
    stock: { leftMl: 4000, overMl: 0 },
  });
  expect(recordOf(run).named.map(({ initials }) => initials)).toEqual(["CD", "AB"]);
});

test("a record stays small, however much was said: within 4 kB of JSON", () => {
  const talked = Array.from({ length: 60 }).reduce<Played>(
    (so, _, turn) =>
      so
        .then({ type: "pour-stock", unit: "ml", count: 10 }, DAY)
        .then({ type: "add-note", text: "x".repeat(400) })
        .then({
          type: "note-taste",
          scores: { acid: turn % 10 },
          words: TASTE_WORDS,
          by: `A${String.fromCharCode(65 + (turn % 26))}`,
        }),
    made,
  );
  const record = recordOf(talked.run);
  expect(record.notes).toHaveLength(300);
  expect(record.taste?.words).toHaveLength(12);
  expect(JSON.stringify(record).length).toBeLessThan(4096);
  // A batch like any other.
  expect(JSON.stringify(recordOf(made.run)).length).toBeLessThan(2048);
});

test("its shape has a version", () => {
  expect(RECORD_SHAPE).toBeGreaterThanOrEqual(2);
});
