import { beforeEach, expect, test } from "vitest";
import { backupDue, countEvents } from "../../../../app/storage/backup/since.ts";
import { writeBackup } from "../../../../app/storage/backup/write.ts";
import type { Database } from "../../../../app/storage/database.ts";
import { DEFAULT_SETTINGS, settingsSchema } from "../../../../app/storage/settings.ts";
import { freshPhone } from "../../../support/phone/phone-storage.ts";
import { FILLED, fill, LOG, MADE, MAKER, unwatched } from "../../../support/world/backup-file.ts";

const open = { runId: "run-a" };
const ended = (at: number, runId = "run-a") =>
  ({ runId, ending: { how: "finished", at } }) as const;
const givenUp = (at: number) => ({ runId: "run-a", ending: { how: "abandoned", at } }) as const;
const at = (lastBackupAt: number, eventsAtBackup: number) => ({ lastBackupAt, eventsAtBackup });

let db: Database;
beforeEach(async () => {
  db = await freshPhone();
});

test.each([
  ["nothing yet", [], 0, at(0, 0), undefined],
  ["one batch just begun", [open], 3, at(0, 0), undefined],
  ["24 entries", [open], 24, at(0, 0), undefined],
  ["25 entries", [open], 25, at(0, 0), { ended: 0, entries: 25 }],
  ["24 entries since the last", [open], 124, at(1000, 100), undefined],
  ["25 entries since the last", [open], 125, at(1000, 100), { ended: 0, entries: 25 }],
  ["a batch finished, never a backup", [ended(5)], 12, at(0, 0), { ended: 1, entries: 12 }],
  ["a batch given up", [open, givenUp(1001)], 101, at(1000, 100), { ended: 1, entries: 1 }],
  [
    "two ended, one before",
    [ended(999), ended(1001)],
    110,
    at(1000, 100),
    { ended: 1, entries: 10 },
  ],
  ["one that ended at that very moment", [ended(1000)], 100, at(1000, 100), undefined],
  ["an invented one", [ended(1001, "demo-history-3")], 100, at(1000, 100), undefined],
  ["fewer entries than in the backup", [], 3, at(1000, 100), undefined],
])("%s", (_, records, events, settings, due) => {
  expect(backupDue(records, events, settings)).toEqual(due);
});

test("settings of before there were backups to be reminded of say that there was none", () => {
  expect(settingsSchema.parse({ people: 2 })).toMatchObject({ lastBackupAt: 0, eventsAtBackup: 0 });
  expect(backupDue([ended(5)], 12, DEFAULT_SETTINGS)).toEqual({ ended: 1, entries: 12 });
});

test("every entry of every log counts", async () => {
  expect(await countEvents(db)).toBe(0);
  await fill(db);
  expect(await countEvents(db)).toBe(LOG.length);
});

test("the invented history is neither counted now nor as part of a backup", async () => {
  await fill(db);
  await db.add("events", { id: "invented", runId: "demo-history-3" });
  expect(await countEvents(db)).toBe(LOG.length);
  const { events, count } = await writeBackup(db, MAKER, unwatched());
  expect({ events, count }).toEqual({ events: LOG.length, count: FILLED + 1 });
});

test("a practice is neither counted nor written into a backup, nor is its picture", async () => {
  await fill(db);
  const runId = "demo-practice-1";
  await db.add("events", { id: "practised", runId });
  const picture = { at: MADE, type: "image/webp", width: 1, height: 1, bytes: new ArrayBuffer(1) };
  await db.put("photos", { ...picture, id: "p", runId });
  expect(await countEvents(db)).toBe(LOG.length);
  const { file, count } = await writeBackup(db, MAKER, unwatched());
  expect(count).toBe(FILLED);
  expect(await file.text()).not.toContain(runId);
});
