import { beforeEach, expect, test } from "vitest";
import { MOST_LINE } from "../../../../app/storage/backup/header.ts";
import type { Database, StoredPhoto } from "../../../../app/storage/database.ts";
import { freshPhone } from "../../../support/phone/phone-storage.ts";
import {
  bringIn,
  fileOfLines,
  fill,
  LOG,
  opened,
  textOf,
} from "../../../support/world/backup-file.ts";

const bytesOf = (length: number, step = 7) =>
  Uint8Array.from({ length }, (_, at) => (at * step) % 256).buffer;
const photo = (id: string, length: number): StoredPhoto => ({
  id,
  runId: "run-a",
  at: 1_764_064_800_000,
  type: "image/jpeg",
  bytes: bytesOf(length),
  width: 1600,
  height: 1200,
});
const line = (rest: object = {}) => {
  const { bytes, ...record } = photo("one", 3);
  return JSON.stringify({ photo: { ...record, base64: "AAcO", ...rest } });
};

let db: Database;
beforeEach(async () => {
  db = await freshPhone();
});

test("pictures go over byte by byte, whatever their length, and no run's record is stale for them", async () => {
  const photos = [photo("a", 0), photo("b", 1), photo("c", 2), photo("d", 3), photo("e", 400_001)];
  for (const one of photos) await db.put("photos", one);
  const text = await textOf(db);
  const there = await freshPhone();
  expect(await opened(there, text)).toMatchObject({ freshCount: 5, left: { count: 0 } });
  expect(await bringIn(there, text)).toEqual({ added: 5, touched: new Set() });
  expect(await there.getAll("photos")).toEqual(photos);
  expect(await opened(there, text)).toMatchObject({ freshCount: 0, known: 5 });
});

test("the base64 is the standard's, as Node reads it", async () => {
  // RFC 4648, section 10: the test vectors "f", "fo", "foo".
  for (const [text, base64] of [
    ["f", "Zg=="],
    ["fo", "Zm8="],
    ["foo", "Zm9v"],
  ] as const) {
    db = await freshPhone();
    const { fresh } = await opened(db, fileOfLines([line({ base64 })]));
    const bytes = fresh.photos.get("one")?.bytes ?? new ArrayBuffer();
    expect(new TextDecoder().decode(bytes)).toBe(text);
    await db.put("photos", { ...photo("one", 0), bytes });
    expect(await textOf(db)).toContain(`"base64":"${base64}"`);
  }
});

test("another picture of the same id is told from the one that is here, by its bytes alone", async () => {
  await db.put("photos", { ...photo("one", 3), bytes: bytesOf(3, 9) });
  expect(await opened(db, fileOfLines([line()]))).toMatchObject({
    freshCount: 0,
    left: { count: 1, first: [{ number: 2, refusal: "line-differs-here" }] },
  });
});

test.each([
  ["a page for a picture", { type: "text/html" }, "type"],
  ["a drawing that may hold a program", { type: "image/svg+xml" }, "type"],
  ["letters that are no base64", { base64: "A<>=" }, "base64"],
  ["base64 that was cut", { base64: "AAc" }, "base64"],
  ["a side of nothing", { width: 0 }, "width"],
  ["no bytes", { base64: undefined }, "base64"],
])("%s is left out with the reason", async (_, rest, field) => {
  expect(await opened(db, fileOfLines([line(rest)]))).toMatchObject({
    freshCount: 0,
    left: { count: 1, first: [{ refusal: "line-field", about: { kind: "photo", field } }] },
  });
});

test("the largest picture that the app keeps is far from too long a line", () => {
  // 1600 by 1200 points at a byte each, which no JPEG of quality 0.8 comes near: judgement.
  expect((1600 * 1200 * 4) / 3).toBeLessThan(MOST_LINE);
});

test("a phone with everything on it goes over as a whole", async () => {
  await fill(db);
  await db.put("photos", photo("a", 5000));
  const there = await freshPhone();
  const { added, touched } = await bringIn(there, await textOf(db));
  expect({ added, touched }).toEqual({ added: LOG.length + 5, touched: new Set(["run-a"]) });
  expect(await there.count("photos")).toBe(1);
});
