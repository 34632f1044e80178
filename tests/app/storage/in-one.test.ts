import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { importBackup } from "../../../app/storage/backup/import.ts";
import { nothingBrought } from "../../../app/storage/backup/kinds.ts";
import { writeTo } from "../../../app/storage/books.ts";
import type { Database } from "../../../app/storage/database.ts";
import { addDemo } from "../../../app/storage/demo.ts";
import { replayPending } from "../../../app/storage/pending.ts";
import { putPhoto } from "../../../app/storage/photos.ts";
import { storedRecord } from "../../../app/storage/rebuild.ts";
import { appendEvents } from "../../../app/storage/run-log.ts";
import { DEFAULT_SETTINGS, writeSettings } from "../../../app/storage/settings.ts";
import { everything, freshPhone } from "../../support/phone/phone-storage.ts";
import { unwatched } from "../../support/world/backup-file.ts";
import { demoSpec, started } from "../../support/world/play-run.ts";

const events = started("run-a", "PB-1", 1_764_000_000_000).finish().events;
const record = storedRecord(events, 0);
if (record === undefined) throw new RangeError("a run that starts has a record");
const spec = demoSpec("Pear Beacon");
const photo = { id: "p", runId: "run-a", at: 1, type: "image/png", width: 1, height: 1 };

let db: Database;
beforeEach(async () => {
  db = await freshPhone();
  const text = JSON.stringify(events);
  const none = () => undefined;
  vi.stubGlobal("localStorage", { getItem: () => text, setItem: none, removeItem: none });
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

const WRITES: [string, () => Promise<unknown>][] = [
  ["an act", () => appendEvents(db, { expected: 0, events, record })],
  ["two specs", () => writeTo(db, "specs", [spec, { ...spec, id: "other" }])],
  ["settings", () => writeSettings(db, DEFAULT_SETTINGS)],
  ["a picture", () => putPhoto(db, { ...photo, bytes: new ArrayBuffer(8) })],
  ["the invented history", () => addDemo(db, [{ events, record }])],
  ["what was confirmed before", () => replayPending(db)],
  [
    "a backup",
    () => {
      const brought = nothingBrought();
      for (const event of events) brought.events.set(event.id, event);
      return importBackup(db, brought, unwatched());
    },
  ],
];

/** As a browser does whose disk is full: the requests hear only that they were broken off. */
function breakOff(tx: IDBTransaction): void {
  if (tx.error === null) Reflect.get(tx, "_abort").call(tx, "QuotaExceededError");
}

/** From now on nothing more fits on the phone. */
function fillUp(): void {
  for (const name of ["add", "put"] as const) {
    const write = IDBObjectStore.prototype[name];
    vi.spyOn(IDBObjectStore.prototype, name).mockImplementation(function (
      this: IDBObjectStore,
      ...rest
    ) {
      const request = Reflect.apply(write, this, rest);
      queueMicrotask(() => breakOff(this.transaction));
      return request;
    });
  }
}

test.each(WRITES)(
  "%s for which there is no room is told to be so, and nothing of it stays",
  async (_, write) => {
    const before = await everything(db);
    fillUp();
    await expect(write()).rejects.toMatchObject({ name: "QuotaExceededError" });
    vi.restoreAllMocks();
    expect(await everything(db)).toEqual(before);
  },
);

test("a write that cannot even be asked for leaves nothing of the act", async () => {
  const write = IDBObjectStore.prototype.add;
  let asked = 0;
  vi.spyOn(IDBObjectStore.prototype, "add").mockImplementation(function (
    this: IDBObjectStore,
    ...rest
  ) {
    asked += 1;
    if (asked > 1) throw new DOMException("not this one", "DataCloneError");
    return Reflect.apply(write, this, rest);
  });
  const appended = appendEvents(db, { expected: 0, events, record });
  await expect(appended).rejects.toThrow("not this one");
  expect(await db.count("events")).toBe(0);
});
