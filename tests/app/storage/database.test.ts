import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";
import { openDB } from "idb";
import { expect, test } from "vitest";
import { readBooks } from "../../../app/storage/books.ts";
import { readLog } from "../../../app/storage/run-log.ts";
import { readSettings } from "../../../app/storage/settings.ts";
import { openAgain } from "../../support/phone-storage.ts";
import { demoSpec, started } from "../../support/play-run.ts";

const log = started("run-a", "PB-2511", 1_764_000_000_000).finish().events;
const beacon = demoSpec("Pear Beacon");

/** A phone as the first version of the app left it. */
async function firstVersion(): Promise<void> {
  globalThis.indexedDB = new IDBFactory();
  const db = await openDB("second-pour", 1, {
    upgrade(old) {
      old.createObjectStore("events", { keyPath: "id" }).createIndex("runId", "runId");
      old.createObjectStore("specs", { keyPath: "id" });
      old.createObjectStore("ingredients", { keyPath: "id" });
      old.createObjectStore("settings");
    },
  });
  for (const event of log) await db.put("events", event);
  await db.put("specs", beacon);
  await db.put("settings", { theme: "light" }, "settings");
  db.close();
}

test("a phone of the first version loses nothing and gains the new shelves", async () => {
  await firstVersion();
  const db = await openAgain();
  expect([...db.objectStoreNames]).toEqual([
    "events",
    "ingredients",
    "planned",
    "procedures",
    "settings",
    "specs",
  ]);
  const read = await readLog(db);
  expect(new Set(read.events)).toEqual(new Set(log));
  expect(read.unread).toBe(0);
  expect(await readBooks(db)).toEqual({
    specs: [beacon],
    ingredients: [],
    procedures: [],
    planned: [],
    unread: 0,
  });
  expect((await readSettings(db)).theme).toBe("light");
});
