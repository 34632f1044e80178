import { beforeEach, expect, test, vi } from "vitest";
import type { Database } from "../../../app/storage/database.ts";
import {
  DEFAULT_SETTINGS,
  deviceId,
  readSettings,
  writeSettings,
} from "../../../app/storage/settings.ts";
import { freshPhone, openAgain } from "../../support/phone/phone-storage.ts";

let db: Database;
beforeEach(async () => {
  db = await freshPhone();
});

test("a new phone has the defaults; what is chosen reads back", async () => {
  expect(await readSettings(db)).toEqual(DEFAULT_SETTINGS);
  const chosen = { ...DEFAULT_SETTINGS, volumes: "oz", theme: "light", soundHeardAt: 5 } as const;
  await writeSettings(db, chosen);
  expect(await readSettings(db)).toEqual(chosen);
});

test("a new phone measures as its country does; one that stored ml or oz before goes on with it", async () => {
  expect(DEFAULT_SETTINGS).toMatchObject({ volumes: "auto", degrees: "auto" });
  // Every write stored all fields, so a phone that never chose has "ml" in its record too.
  for (const volumes of ["ml", "oz"] as const) {
    await db.put("settings", { volumes, theme: "dark" }, "settings");
    expect(await readSettings(db)).toMatchObject({ volumes, degrees: "C" });
  }
  await writeSettings(db, { ...DEFAULT_SETTINGS, degrees: "F" });
  expect(await readSettings(db)).toMatchObject({ volumes: "auto", degrees: "F" });
});

test("an older record takes the defaults for what it lacks, a damaged one for everything", async () => {
  await db.put("settings", { theme: "dark" }, "settings");
  // It was written before there was a choice by country: what it was used to goes on.
  expect(await readSettings(db)).toEqual({
    ...DEFAULT_SETTINGS,
    ...{ theme: "dark", volumes: "ml", degrees: "C" },
  });
  for (const damaged of [{ theme: "plaid" }, { jiggerStep: 3 }, { vessel: 0 }, "dark", 7]) {
    await db.put("settings", damaged, "settings");
    expect(await readSettings(db)).toEqual(DEFAULT_SETTINGS);
  }
});

test("the phone's id is made once, also by two windows at once", async () => {
  const window2 = await openAgain();
  let made = 0;
  const newId = () => `phone-${++made}`;
  const [a, b] = await Promise.all([deviceId(db, newId), deviceId(window2, newId)]);
  expect(a).toBe(b);
  expect(await deviceId(db, newId)).toBe(a);
  await writeSettings(db, DEFAULT_SETTINGS);
  expect(await deviceId(db, newId)).toBe(a);
});

test("every write asks to be flushed to disk", async () => {
  const asked = vi.spyOn(IDBDatabase.prototype, "transaction");
  await writeSettings(db, DEFAULT_SETTINGS);
  await deviceId(db, () => "phone");
  const writes = asked.mock.calls.filter(([, mode]) => mode === "readwrite");
  expect(writes.map(([, , options]) => options)).toEqual(Array(2).fill({ durability: "strict" }));
  // A phone that has its id only looks.
  const before = writes.length;
  await deviceId(db, () => "another");
  expect(asked.mock.calls.filter(([, mode]) => mode === "readwrite")).toHaveLength(before);
  asked.mockRestore();
});
