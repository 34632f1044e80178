import { beforeEach, expect, test, vi } from "vitest";
import {
  type Backup,
  compareBackup,
  importBackup,
  readBackup,
  writeBackup,
} from "../../../app/storage/backup.ts";
import { writeTo } from "../../../app/storage/books.ts";
import type { Database } from "../../../app/storage/database.ts";
import { appendEvents, readLog } from "../../../app/storage/run-log.ts";
import { DAIRY_WASH } from "../../../core/method/dairy-wash.ts";
import { CUPBOARD } from "../../../core/spec/cupboard-table.ts";
import { everything, freshPhone } from "../../support/phone-storage.ts";
import { plannedBatch } from "../../support/planned-batch.ts";
import { demoSpec, started } from "../../support/play-run.ts";

const MADE = Date.parse("2025-11-25T10:00:00Z");
const log = started("run-a", "PB-2511", MADE).finish().events;
const beacon = demoSpec("Pear Beacon");
const ownWash = { ...DAIRY_WASH, id: "own-wash", name: "Slower wash" };
const friday = plannedBatch("friday", MADE);
const vodka = CUPBOARD.slice(0, 1);

async function fill(db: Database): Promise<void> {
  await appendEvents(db, "run-a", 0, log);
  await writeTo(db, "specs", [beacon]);
  await writeTo(db, "ingredients", vodka);
  await writeTo(db, "procedures", [ownWash]);
  await writeTo(db, "planned", [friday]);
}

async function backupOf(db: Database): Promise<Backup> {
  const read = await readBackup(await writeBackup(db, MADE, "0.0.0-test"));
  if (!read.ok) throw new RangeError(`backup refused: ${read.refusal}`);
  return read.value;
}

let db: Database;
beforeEach(async () => {
  db = await freshPhone();
});

test("a backup read on another phone brings everything over", async () => {
  await fill(db);
  const before = await everything(db);
  const backup = await backupOf(db);
  const there = await freshPhone();
  expect(await compareBackup(there, backup)).toEqual({ fresh: log.length + 4, known: 0 });
  expect(await importBackup(there, backup)).toBe(log.length + 4);
  expect(await everything(there)).toEqual(before);
});

test("bringing it in twice changes nothing", async () => {
  await fill(db);
  const backup = await backupOf(db);
  const before = await everything(db);
  expect(await compareBackup(db, backup)).toEqual({ fresh: 0, known: log.length + 4 });
  expect(await importBackup(db, backup)).toBe(0);
  expect(await everything(db)).toEqual(before);
});

test("a backup adds what is missing and overwrites nothing", async () => {
  await fill(db);
  const backup = await backupOf(db);
  const there = await freshPhone();
  await writeTo(there, "specs", [{ ...beacon, notes: "changed here" }]);
  await appendEvents(there, "run-a", 0, log.slice(0, 2));
  expect(await compareBackup(there, backup)).toEqual({ fresh: log.length + 1, known: 3 });
  expect(await importBackup(there, backup)).toBe(log.length + 1);
  expect((await there.getAll("specs")).at(0)).toMatchObject({ notes: "changed here" });
  expect((await readLog(there)).events).toHaveLength(log.length);
});

test("a record that stands twice in the file is added once", async () => {
  const twice = {
    events: [...log, ...log],
    specs: [],
    ingredients: [],
    procedures: [],
    planned: [],
    unreadLines: [],
  };
  expect(await compareBackup(db, twice)).toEqual({ fresh: log.length, known: 0 });
  expect(await importBackup(db, twice)).toBe(log.length);
});

test("a write that the phone breaks off adds nothing at all", async () => {
  await fill(db);
  const backup = await backupOf(db);
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
  await expect(importBackup(there, backup)).rejects.toThrow();
  full.mockRestore();
  expect(await everything(there)).toEqual([[], [], [], [], [], []]);
});

test("a backup of an empty phone is a backup", async () => {
  expect(await backupOf(db)).toEqual({
    events: [],
    specs: [],
    ingredients: [],
    procedures: [],
    planned: [],
    unreadLines: [],
  });
});

test("adding asks once to be flushed to disk", async () => {
  await fill(db);
  const backup = await backupOf(db);
  const there = await freshPhone();
  const asked = vi.spyOn(IDBDatabase.prototype, "transaction");
  await importBackup(there, backup);
  expect(asked.mock.calls).toEqual([
    [
      ["events", "specs", "ingredients", "procedures", "planned"],
      "readwrite",
      { durability: "strict" },
    ],
  ]);
  asked.mockRestore();
});

const changed = (text: string, from: string, to: string) => {
  if (!text.includes(from)) throw new RangeError(`the backup does not hold ${from}`);
  return text.replace(from, to);
};
const lines = log.length + 4;

test.each<[string, (text: string) => string, string, object]>([
  ["an empty file", () => "", "backup-not-ours", {}],
  ["a note", () => "2 oz gin\n1 oz lemon", "backup-not-ours", {}],
  ["another program's file", () => '{"format":"diary","version":1}', "backup-not-ours", {}],
  ["a header that is null", () => "null", "backup-not-ours", {}],
  ["a header without a version", (t) => changed(t, '"version":1,', ""), "backup-not-ours", {}],
  [
    "a version in words",
    (t) => changed(t, '"version":1', '"version":"one"'),
    "backup-not-ours",
    {},
  ],
  [
    "a newer format",
    (t) => changed(t, '"version":1', '"version":2'),
    "backup-newer",
    { version: 2 },
  ],
  ["its header alone", (t) => t.split("\n")[0] ?? "", "backup-damaged", { lines, found: 0 }],
  ["one cut short", (t) => t.slice(0, t.length / 2), "backup-damaged", { lines }],
  [
    "one that lost a line",
    (t) => t.split("\n").toSpliced(2, 1).join("\n"),
    "backup-damaged",
    { lines, found: lines - 1 },
  ],
  ["one letter altered", (t) => changed(t, "Pear eau", "Bear eau"), "backup-damaged", { lines }],
  [
    "one altered header",
    (t) => changed(t, '"sha256":"', '"sha256":"0'),
    "backup-damaged",
    { lines },
  ],
])("%s is refused and nothing changes", async (_, damage, refusal, about) => {
  await fill(db);
  const before = await everything(db);
  const read = await readBackup(damage(await writeBackup(db, MADE, "0.0.0-test")));
  expect(read).toMatchObject({ ok: false, refusal, about });
  expect(await everything(db)).toEqual(before);
});

test.each<[string, (text: string) => string]>([
  ["with the line ends of another system", (t) => t.replaceAll("\n", "\r\n")],
  ["with a byte order mark", (t) => `\uFEFF${t}`],
  ["without its last line end", (t) => t.trimEnd()],
])("a file saved again %s still reads", async (_, save) => {
  await fill(db);
  const read = await readBackup(save(await writeBackup(db, MADE, "0.0.0-test")));
  expect(read).toMatchObject({ ok: true, value: { events: { length: log.length } } });
});

test("what this version cannot read goes into the file, comes out counted, and harms nothing", async () => {
  const odd = { id: "odd", runId: "run-a", type: "moon.waxed" };
  await fill(db);
  await db.put("events", odd);
  const text = await writeBackup(db, MADE, "0.0.0-test");
  expect(text).toContain("moon.waxed");
  const read = await readBackup(text);
  // The header is line 1, and records stand in the order of their ids.
  expect(read).toMatchObject({ ok: true, value: { unreadLines: [2], specs: [beacon] } });
  const before = await everything(db);
  if (read.ok) await importBackup(db, read.value);
  expect(await everything(db)).toEqual(before);
});
