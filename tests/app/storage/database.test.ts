import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";
import { type IDBPDatabase, openDB } from "idb";
import { expect, test } from "vitest";
import { readBooks } from "../../../app/storage/books.ts";
import { openDatabase } from "../../../app/storage/database.ts";
import { rebuildRecords } from "../../../app/storage/rebuild.ts";
import { readRecords, staleRecords } from "../../../app/storage/records.ts";
import { readSettings } from "../../../app/storage/settings.ts";
import { everyEvent, openAgain } from "../../support/phone/phone-storage.ts";
import { demoSpec, started } from "../../support/world/play-run.ts";

const log = started("run-a", "PB-2511", 1_764_000_000_000).finish().events;
const beacon = demoSpec("Pear Beacon");

const FIRST = (old: IDBPDatabase) => {
  old.createObjectStore("events", { keyPath: "id" }).createIndex("runId", "runId");
  old.createObjectStore("specs", { keyPath: "id" });
  old.createObjectStore("ingredients", { keyPath: "id" });
  old.createObjectStore("settings");
};
const SECOND = (old: IDBPDatabase) => {
  FIRST(old);
  old.createObjectStore("procedures", { keyPath: "id" });
  old.createObjectStore("planned", { keyPath: "id" });
};
const OLDER = [
  [1, FIRST],
  [2, SECOND],
] as const;

/** A phone as an older version of the app left it. */
async function left(version: number, upgrade: (old: IDBPDatabase) => void): Promise<void> {
  globalThis.indexedDB = new IDBFactory();
  const db = await openDB("second-pour", version, { upgrade });
  for (const event of log) await db.put("events", event);
  await db.put("specs", beacon);
  await db.put("settings", { theme: "light" }, "settings");
  db.close();
}

test.each(OLDER)(
  "a phone of version %i loses nothing and gains the new shelves",
  async (...made) => {
    await left(...made);
    const db = await openAgain();
    expect([...db.objectStoreNames]).toEqual([
      "events",
      "ingredients",
      "photos",
      "planned",
      "procedures",
      "records",
      "settings",
      "specs",
    ]);
    expect(new Set(await everyEvent(db))).toEqual(new Set(log));
    expect(await readBooks(db)).toEqual({
      specs: [beacon],
      ingredients: [],
      procedures: [],
      planned: [],
      unread: 0,
    });
    expect((await readSettings(db)).theme).toBe("light");
  },
);

test.each(OLDER)("the records of version %i are worked out at the first start", async (...made) => {
  await left(...made);
  const db = await openAgain();
  const stale = await staleRecords(db);
  expect(stale).toBe("all");
  await rebuildRecords(db, stale ?? []);
  const records = [];
  for await (const part of readRecords(db)) records.push(...part);
  expect(records).toMatchObject([{ id: "run-a", unread: 0, record: { batch: "PB-2511" } }]);
  expect(await staleRecords(db)).toBeUndefined();
});

test("a phone that a newer version has written on is opened to be read, as it stands", async () => {
  await left(9, (old) => {
    SECOND(old);
    old.createObjectStore("records", { keyPath: "id" }).createIndex("openSince", "openSince");
    old.createObjectStore("moons");
  });
  const news = { onSuperseded: () => undefined, onLost: () => undefined };
  const { db, newer } = await openDatabase(news);
  expect(newer).toBe(true);
  expect(db.version).toBe(9);
  expect(new Set(await everyEvent(db))).toEqual(new Set(log));
  expect((await readSettings(db)).theme).toBe("light");
});
