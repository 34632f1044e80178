import { expect, test } from "vitest";
import { forgettable, photosOf, tagsOf } from "../../../core/run/keepsakes.ts";
import { mergeEvents } from "../../../core/run/order.ts";
import { resumed, started } from "../../support/world/play-run.ts";

const begun = started("a", "PB-2511", Date.parse("2025-11-25T10:00:00Z"));
const photo = (id: string) =>
  ({ type: "add-photo", photo: id, media: "image/jpeg", bytes: 9, width: 4, height: 3 }) as const;

test("tags stand in the order they were put on, until taken off", () => {
  const tagged = begun
    .then({ type: "add-tag", tag: "summer menu" })
    .then({ type: "add-tag", tag: "  party   of ten " });
  expect(tagsOf(tagged.run)).toEqual(["summer menu", "party of ten"]);
  // The same word in other letters is the same tag.
  expect(tagsOf(tagged.then({ type: "add-tag", tag: "Summer Menu" }).run)).toHaveLength(2);
  const fewer = tagged.then({ type: "remove-tag", tag: "SUMMER MENU" });
  expect(tagsOf(fewer.run)).toEqual(["party of ten"]);
  expect(tagsOf(fewer.then({ type: "add-tag", tag: "summer menu" }).run)).toEqual([
    "party of ten",
    "summer menu",
  ]);
});

test("tags of two phones are all there after they meet", () => {
  const here = begun.then({ type: "add-tag", tag: "one" }, 1, "phone-a");
  const there = begun.then({ type: "add-tag", tag: "two" }, 2, "phone-b");
  const theirs = there.events
    .slice(begun.events.length)
    .map((event) => ({ ...event, id: `b-${event.id}`, act: `b-${event.act}` }));
  expect(tagsOf(resumed(mergeEvents(here.events, theirs)).run)).toEqual(["one", "two"]);
});

test("a removed picture is gone, until its removal is taken back", () => {
  const two = begun.then(photo("p-1")).then(photo("p-2"));
  const one = two.then({ type: "remove-photo", photo: "p-1" });
  expect(photosOf(one.run).map((each) => each.photo)).toEqual(["p-2"]);
  const back = one.then({ type: "undo", act: one.events.at(-1)?.act ?? "" });
  expect(photosOf(back.run).map((each) => each.photo)).toEqual(["p-1", "p-2"]);
});

test("a stored picture is deleted only an hour after it was removed, or was never written down", () => {
  const HOUR = 3_600_000;
  const two = begun.then(photo("kept")).then(photo("removed"));
  const { run } = two.then({ type: "remove-photo", photo: "removed" });
  const at = run.unpictured[0]?.at ?? 0;
  const stored = ["kept", "removed", "stray"].map((id) => ({ id, at: at - HOUR }));
  expect(forgettable(run, stored, at)).toEqual([]);
  expect(forgettable(run, stored, at + 1)).toEqual(["stray"]);
  expect(forgettable(run, stored, at + HOUR)).toEqual(["stray"]);
  expect(forgettable(run, stored, at + HOUR + 1)).toEqual(["removed", "stray"]);
});
