import { beforeEach, expect, test } from "vitest";
import type { Database } from "../../../app/storage/database.ts";
import { dropPhotos, photoRoom, photosOfRun, putPhoto } from "../../../app/storage/photos.ts";
import { freshPhone, openAgain } from "../../support/phone/phone-storage.ts";

const photo = (id: string, runId: string, size = 4) => ({
  id,
  runId,
  at: 1_000_000_000_000,
  type: "image/jpeg",
  bytes: new ArrayBuffer(size),
  width: 4,
  height: 3,
});

let db: Database;
beforeEach(async () => {
  db = await freshPhone();
});

test("a picture is read back with its batch, also by another window", async () => {
  await putPhoto(db, photo("one", "run-a"));
  await putPhoto(db, photo("two", "run-a", 9));
  await putPhoto(db, photo("three", "run-b"));
  const here = await photosOfRun(await openAgain(), "run-a");
  expect(here.map(({ id }) => id)).toEqual(["one", "two"]);
  expect(here[1]?.bytes.byteLength).toBe(9);
  expect(await photosOfRun(db, "run-c")).toEqual([]);
});

test("deleted for good, and nothing else with it", async () => {
  await putPhoto(db, photo("one", "run-a"));
  await putPhoto(db, photo("two", "run-a"));
  await dropPhotos(db, ["one", "unheard-of"]);
  await dropPhotos(db, []);
  expect((await photosOfRun(db, "run-a")).map(({ id }) => id)).toEqual(["two"]);
});

test("how many there are and how much room they take", async () => {
  expect(await photoRoom(db)).toEqual({ count: 0, bytes: 0 });
  await putPhoto(db, photo("one", "run-a", 1000));
  await putPhoto(db, photo("two", "run-b", 500));
  expect(await photoRoom(db)).toEqual({ count: 2, bytes: 1500 });
});
