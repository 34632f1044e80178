import { afterEach, beforeEach, expect, test, vi } from "vitest";
import type { Database } from "../../../app/storage/database.ts";
import { dropPending, keepPending, replayPending } from "../../../app/storage/pending.ts";
import { rebuildRecords } from "../../../app/storage/rebuild.ts";
import { staleRecords } from "../../../app/storage/records.ts";
import { append, everyEvent, freshPhone } from "../../support/phone/phone-storage.ts";
import { started } from "../../support/world/play-run.ts";

const KEY = "second-pour-pending";
const log = started("run-a", "PB-2511", 1_764_000_000_000).finish().events;
const [first, second] = [log.slice(0, 2), log.slice(2)];

/** The phone's small store, in memory. */
function smallStore(room = Number.POSITIVE_INFINITY) {
  const kept = new Map<string, string>();
  return {
    kept,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => {
      if (text.length > room) throw new DOMException("full", "QuotaExceededError");
      kept.set(key, text);
    },
    removeItem: (key: string) => kept.delete(key),
  };
}

let db: Database;
let small: ReturnType<typeof smallStore>;
beforeEach(async () => {
  db = await freshPhone();
  small = smallStore();
  vi.stubGlobal("localStorage", small);
});
afterEach(() => vi.unstubAllGlobals());

const stored = () => everyEvent(db);

test("what was confirmed and never reached the database is there at the next start", async () => {
  keepPending(first);
  keepPending(second);
  expect(await replayPending(db)).toBe(log.length);
  expect(new Set(await stored())).toEqual(new Set(log));
  expect(small.kept.has(KEY)).toBe(false);
});

test("what did reach it is not stored twice, and a second start changes nothing", async () => {
  await append(db, "run-a", 0, first);
  keepPending(log);
  expect(await replayPending(db)).toBe(second.length);
  expect(await replayPending(db)).toBe(0);
  expect(await stored()).toHaveLength(log.length);
});

test("what is stored is let go of, and nothing else", async () => {
  keepPending(first);
  keepPending(second);
  dropPending(first);
  expect(await replayPending(db)).toBe(second.length);
});

test.each([
  ["cut short", (text: string) => text.slice(0, -20), 0],
  ["of another kind", () => "7", 0],
  ["with a stranger in it", (text: string) => text.replace("[", '[{"id":"odd"},'), log.length],
])("a copy %s stores what can be read and is set aside", async (_, spoil, count) => {
  keepPending(log);
  const text = spoil(small.kept.get(KEY) ?? "");
  small.kept.set(KEY, text);
  expect(await replayPending(db)).toBe(count);
  expect(small.kept.get("second-pour-pending-damaged")).toBe(text);
});

test("a phone without room for a copy, or without such a store, goes on", async () => {
  vi.stubGlobal("localStorage", smallStore(10));
  keepPending(log);
  expect(await replayPending(db)).toBe(0);
  vi.stubGlobal("localStorage", undefined);
  keepPending(log);
  dropPending(log);
  expect(await replayPending(db)).toBe(0);
});

test("the record of a batch that gained something is worked out anew", async () => {
  await append(db, "run-a", 0, first);
  await rebuildRecords(db, "all");
  keepPending(log);
  await replayPending(db);
  expect(await staleRecords(db)).toEqual(["run-a"]);
  await rebuildRecords(db, ["run-a"]);
  expect(await staleRecords(db)).toBeUndefined();
});
