import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { perform, saveSettings } from "../../app/commands.ts";
import { makeBackup, readBackup } from "../../app/commands-backup.ts";
import { layDesk } from "../../app/desk.ts";
import { pen } from "../../app/pen.ts";
import { logOf, settings } from "../../app/state.ts";
import type { Database } from "../../app/storage/database.ts";
import { replayPending } from "../../app/storage/pending.ts";
import { DEFAULT_SETTINGS, readSettings } from "../../app/storage/settings.ts";
import { append, everyEvent, freshPhone, openAgain } from "../support/phone/phone-storage.ts";
import { unwatched } from "../support/world/backup-file.ts";
import { started } from "../support/world/play-run.ts";

let db: Database;
let made = 0;

const CLOCK = {
  now: () => 1,
  mono: () => 1,
  every: () => () => undefined,
  after: () => () => undefined,
};

const lay = (reopen: () => Promise<Database>): void =>
  layDesk({
    db,
    reopen,
    clock: CLOCK,
    device: "phone-a",
    newId: () => `id-${made++}`,
    announce: () => undefined,
  });

beforeEach(async () => {
  db = await freshPhone();
  settings.value = DEFAULT_SETTINGS;
  pen.value = "mine";
  lay(openAgain);
});

afterEach(() => {
  vi.unstubAllGlobals();
});

test("two choices made at once are both kept", async () => {
  await Promise.all([saveSettings({ people: 3 }), saveSettings({ filterStands: 4 })]);
  expect(settings.value).toMatchObject({ people: 3, filterStands: 4 });
  expect(await readSettings(db)).toMatchObject({ people: 3, filterStands: 4 });
});

test("a log that the browser closed under us is opened anew to be read", async () => {
  const { events } = started("run-1", "PB-1", 0);
  for (const event of events) await db.add("events", event);
  db.close();
  const done = await perform("run-1", { type: "add-note", text: "Stirred" });
  expect(done.ok).toBe(true);
});

test("a log that cannot be read is a refusal with its reason, not silence", async () => {
  db.close();
  lay(() => Promise.reject(new DOMException("the disk is gone", "UnknownError")));
  expect(await perform("run-2", { type: "add-note", text: "Stirred" })).toMatchObject({
    ok: false,
    refusal: "not-saved",
    about: { why: "the disk is gone" },
  });
});

test("a backup is made and read although the browser closed the database meanwhile", async () => {
  const { events } = started("run-3", "PB-3", 0);
  for (const event of events) await db.add("events", event);
  db.close();
  const made = await makeBackup(unwatched());
  expect(made).toMatchObject({ ok: true, value: { count: events.length } });
  db = await openAgain();
  db.close();
  lay(openAgain);
  if (made.ok) expect(await readBackup(made.value.file, unwatched())).toMatchObject({ ok: true });
});

test("what is gone from the phone is not written on: the sentence says that it is not here", async () => {
  const { events } = started("run-4", "PB-4", 0);
  await append(db, "run-4", 0, events);
  expect(await perform("run-4", { type: "add-note", text: "Stirred" })).toMatchObject({ ok: true });
  for (const { id } of await everyEvent(db)) await db.delete("events", id);
  const done = await perform("run-4", { type: "add-note", text: "Stirred again" });
  expect(done).toMatchObject({ ok: false, refusal: "run-not-started" });
  expect(logOf("run-4")).toEqual([]);
});

test("an act that a window which took over has stored is not said to be lost", async () => {
  const kept = new Map<string, string>();
  const { events } = started("run-5", "PB-5", 0);
  await append(db, "run-5", 0, events);
  const other = await openAgain();
  let taken: Promise<unknown> | undefined;
  vi.stubGlobal("localStorage", {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => {
      kept.set(key, text);
      // At this moment the pen goes to another window, which looks for what was confirmed.
      taken ??= replayPending(other).then(() => {
        pen.value = "elsewhere";
      });
    },
    removeItem: (key: string) => kept.delete(key),
  });
  const done = await perform("run-5", { type: "add-note", text: "Stirred" });
  await taken;
  const notes = (await everyEvent(db)).filter(({ type }) => type === "note.added");
  expect(done).toMatchObject({ ok: true, value: notes[0]?.act });
  expect(notes).toHaveLength(1);
});

test("a small store that gives nothing out stops nobody, and makes nothing that is stored untrue", async () => {
  const { events } = started("run-6", "PB-6", 0);
  await append(db, "run-6", 0, events);
  vi.stubGlobal("localStorage", {
    getItem: () => {
      throw new DOMException("damaged", "UnknownError");
    },
  });
  expect(await perform("run-6", { type: "add-note", text: "Stirred" })).toMatchObject({ ok: true });
  await expect(replayPending(db)).resolves.toBe(0);
});
