import { beforeEach, expect, test } from "vitest";
import { perform, saveSettings } from "../../app/commands.ts";
import { layDesk } from "../../app/desk.ts";
import { pen } from "../../app/pen.ts";
import { settings } from "../../app/state.ts";
import type { Database } from "../../app/storage/database.ts";
import { DEFAULT_SETTINGS, readSettings } from "../../app/storage/settings.ts";
import { freshPhone, openAgain } from "../support/phone/phone-storage.ts";
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
