import { beforeEach, expect, test, vi } from "vitest";
import { importBackup } from "../../../app/storage/backup/import.ts";
import { openBackup } from "../../../app/storage/backup/open.ts";
import { fileOf, writeBackup } from "../../../app/storage/backup/write.ts";
import { readBooks, writeTo } from "../../../app/storage/books.ts";
import type { Database } from "../../../app/storage/database.ts";
import { staleRecords } from "../../../app/storage/records.ts";
import { append, everyEvent, everything, freshPhone } from "../../support/phone/phone-storage.ts";
import {
  BEACON,
  bringIn,
  FILLED,
  fileOfLines,
  fill,
  LOG,
  MADE,
  MAKER,
  opened,
  textOf,
  unwatched,
} from "../../support/world/backup-file.ts";

/** What a backup brings, without what is worked out from it. */
const keptIn = async (db: Database) => ({
  events: await db.getAll("events"),
  books: await readBooks(db),
});

let db: Database;
beforeEach(async () => {
  db = await freshPhone();
});

test("a backup read on another phone brings everything over", async () => {
  await fill(db);
  const before = await keptIn(db);
  const text = await textOf(db);
  const there = await freshPhone();
  expect(await opened(there, text)).toMatchObject({
    madeAt: MADE,
    freshCount: FILLED,
    known: 0,
    left: { count: 0, first: [] },
    startless: 0,
  });
  expect((await opened(there, text)).damage).toBeUndefined();
  expect(await bringIn(there, text)).toEqual({ added: FILLED, touched: new Set(["run-a"]) });
  expect(await keptIn(there)).toEqual(before);
});

test("opening a file stores nothing", async () => {
  await fill(db);
  const text = await textOf(db);
  const there = await freshPhone();
  const before = await everything(there);
  await opened(there, text);
  expect(await everything(there)).toEqual(before);
});

test("bringing it in twice changes nothing", async () => {
  await fill(db);
  const text = await textOf(db);
  const before = await everything(db);
  expect(await opened(db, text)).toMatchObject({ freshCount: 0, known: FILLED });
  expect(await bringIn(db, text)).toEqual({ added: 0, touched: new Set() });
  expect(await everything(db)).toEqual(before);
});

test("a backup adds what is missing, overwrites nothing, and says what differs", async () => {
  await fill(db);
  const text = await textOf(db);
  const there = await freshPhone();
  await writeTo(there, "specs", [{ ...BEACON, notes: "changed here" }]);
  await append(there, "run-a", 0, LOG.slice(0, 2));
  expect(await opened(there, text)).toMatchObject({
    freshCount: LOG.length + 1,
    known: 2,
    // The header is line 1, the events follow.
    left: { count: 1, first: [{ number: LOG.length + 2, refusal: "line-differs-here" }] },
  });
  expect((await bringIn(there, text)).added).toBe(LOG.length + 1);
  expect((await there.getAll("specs")).at(0)).toMatchObject({ notes: "changed here" });
  expect(await everyEvent(there)).toHaveLength(LOG.length);
});

test("the runs whose logs grew are marked in the same transaction, and no others", async () => {
  await fill(db);
  const text = await textOf(db);
  const there = await freshPhone();
  const asked = vi.spyOn(IDBDatabase.prototype, "transaction");
  const { fresh } = await opened(there, text);
  asked.mockClear();
  await importBackup(there, fresh, unwatched());
  expect(asked.mock.calls).toEqual([
    [
      ["events", "specs", "ingredients", "procedures", "planned", "photos", "settings"],
      "readwrite",
      { durability: "strict" },
    ],
  ]);
  asked.mockRestore();
  expect(await there.get("settings", "records")).toMatchObject({ stale: ["run-a"] });
  expect(await staleRecords(there)).toBe("all");
});

test("a write that the phone breaks off adds nothing at all", async () => {
  await fill(db);
  const { fresh } = await opened(await freshPhone(), await textOf(db));
  const there = await freshPhone();
  const add = IDBObjectStore.prototype.add;
  // As when the phone runs out of space half way.
  const full = vi.spyOn(IDBObjectStore.prototype, "add").mockImplementation(function (
    this: IDBObjectStore,
    value: unknown,
  ) {
    const request = add.call(this, value);
    if (this.name === "ingredients") this.transaction.abort();
    return request;
  });
  await expect(importBackup(there, fresh, unwatched())).rejects.toThrow();
  full.mockRestore();
  expect(await everything(there)).toEqual(await everything(await freshPhone()));
});

test("something that was stored between the look and the hold is left as it is", async () => {
  await fill(db);
  const text = await textOf(db);
  const there = await freshPhone();
  const { fresh } = await opened(there, text);
  await writeTo(there, "specs", [{ ...BEACON, notes: "written meanwhile" }]);
  expect((await importBackup(there, fresh, unwatched())).added).toBe(FILLED - 1);
  expect((await there.getAll("specs")).at(0)).toMatchObject({ notes: "written meanwhile" });
});

test("a backup of an empty phone is a backup", async () => {
  expect(await opened(db, await textOf(db))).toMatchObject({ freshCount: 0, known: 0 });
});

test("a file of the first version reads as ever", async () => {
  const lines = [...LOG.map((event) => ({ event })), { spec: BEACON }];
  const file = fileOfLines(lines.map((line) => JSON.stringify(line)));
  const read = await opened(db, file);
  expect(read).toMatchObject({ freshCount: LOG.length + 1, left: { count: 0 } });
  expect(read.damage).toBeUndefined();
});

test("what this version writes is what the first version would read", async () => {
  await fill(db);
  const text = await textOf(db);
  const [first = "", ...lines] = text.trimEnd().split("\n");
  expect(fileOfLines(lines)).toBe(
    text.replace(/"app":"[^"]*"/u, '"app":"x"').replace(first, first.replace(MAKER.app, "x")),
  );
});

test("a few records as a file read like any backup", async () => {
  const text = await fileOf({ events: LOG }, MAKER);
  expect(await opened(db, text)).toMatchObject({ freshCount: LOG.length });
});

test("what is stored while the file is written is in it wholly or not at all", async () => {
  await fill(db);
  const all = db.getAll.bind(db);
  const late = { ...LOG[0], id: "run-a-0-00", act: "late" };
  // Another act is stored after the ids were read, with an id among those that are read next.
  const slipped = vi.spyOn(db, "getAll").mockImplementation(async (name, range) => {
    if (name === "events" && (await db.getKey("events", late.id)) === undefined) {
      await db.add("events", { ...late, runId: "run-a" });
    }
    return all(name, range);
  });
  const { file, count, events } = await writeBackup(db, MAKER, unwatched());
  slipped.mockRestore();
  expect(await db.getKey("events", late.id)).toBe(late.id);
  expect({ count, events }).toEqual({ count: FILLED, events: LOG.length });
  expect(await file.text()).not.toContain(late.id);
});

test("what this version cannot read goes into the file, comes out listed, and harms nothing", async () => {
  const odd = { id: "odd", runId: "run-a", type: "moon.waxed" };
  await fill(db);
  await db.put("events", odd);
  const text = await textOf(db);
  expect(text).toContain("moon.waxed");
  // The header is line 1, and records stand in the order of their ids.
  const left = { count: 1, first: [{ number: 2, refusal: "line-field" }] };
  expect(await opened(db, text)).toMatchObject({ left, freshCount: 0, known: FILLED });
  const before = await keptIn(db);
  await bringIn(db, text);
  expect(await keptIn(db)).toEqual(before);
});

/** Work that is given up at its first sign of life, on a clock that runs fast. */
function givenUp() {
  const control = new AbortController();
  let ticks = 0;
  const parts: [number, number][] = [];
  const onPart = (done: number, all: number) => {
    parts.push([done, all]);
    control.abort();
  };
  return { parts, work: { mono: () => (ticks += 9), signal: control.signal, onPart } };
}

test("each part of the work tells how far it is, and can be given up: nothing is changed", async () => {
  await fill(db);
  const text = await textOf(db);
  const writing = givenUp();
  await expect(writeBackup(db, MAKER, writing.work)).rejects.toThrow(/abort/iu);
  expect(writing.parts).toEqual([[1, FILLED]]);
  const there = await freshPhone();
  const reading = givenUp();
  await expect(openBackup(there, new Blob([text]), reading.work)).rejects.toThrow(/abort/iu);
  expect(reading.parts).toEqual([[0, FILLED]]);
  const { fresh } = await opened(there, text);
  const before = await everything(there);
  const adding = givenUp();
  await expect(importBackup(there, fresh, adding.work)).rejects.toThrow(/abort/iu);
  expect(adding.parts).toEqual([[LOG.length, FILLED]]);
  expect(await everything(there)).toEqual(before);
});

test("the page gets a turn before every slice of work is over", async () => {
  await fill(db);
  let ticks = 0;
  let turns = 0;
  const work = { ...unwatched(), mono: () => (ticks += 9), onPart: () => (turns += 1) };
  await writeBackup(db, MAKER, work);
  // On this clock every record takes longer than a slice.
  expect(turns).toBe(FILLED);
});
