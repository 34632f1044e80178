import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { layDesk } from "../../app/desk.ts";
import { pen } from "../../app/pen.ts";
import { everyRecord, openDesk, readEverything, takeOver } from "../../app/reading.ts";
import { forgetRuns, logOf, openRuns, records } from "../../app/state.ts";
import type { Database } from "../../app/storage/database.ts";
import { keepPending } from "../../app/storage/pending.ts";
import { rebuildRecords } from "../../app/storage/rebuild.ts";
import { markStale, staleRecords } from "../../app/storage/records.ts";
import { append, everyEvent, freshPhone, openAgain } from "../support/phone/phone-storage.ts";
import { started } from "../support/world/play-run.ts";

const run = started("run-1", "PB-1", 1_764_000_000_000).finish();
const log = run.events;

const CLOCK = {
  now: () => 1,
  mono: () => 1,
  every: () => () => undefined,
  after: () => () => undefined,
};

let db: Database;
let reopen: () => Promise<Database>;

const desk = () => ({
  db,
  reopen: () => reopen(),
  clock: CLOCK,
  newId: () => "id",
  announce: () => undefined,
});

beforeEach(async () => {
  const kept = new Map<string, string>();
  vi.stubGlobal("localStorage", {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => kept.set(key, text),
    removeItem: (key: string) => kept.delete(key),
  });
  db = await freshPhone();
  reopen = openAgain;
  pen.value = "elsewhere";
  forgetRuns(new Set(["run-1"]));
});
afterEach(() => vi.unstubAllGlobals());

test("who takes over from a window that died stores what it had confirmed", async () => {
  await append(db, "run-1", 0, log.slice(0, -1));
  await openDesk(desk(), async () => "phone-b");
  keepPending(log.slice(-1));
  await takeOver();
  expect((await everyEvent(db)).map(({ id }) => id).toSorted()).toEqual(
    log.map(({ id }) => id).toSorted(),
  );
  expect(logOf("run-1")).toHaveLength(log.length);
  expect(await staleRecords(db)).toBeUndefined();
});

test("who takes over from a window that died in an import works out what it had left", async () => {
  await rebuildRecords(db, "all");
  await openDesk(desk(), async () => "phone-b");
  for (const event of log) await db.add("events", event);
  await markStale(db.transaction("settings", "readwrite").store, ["run-1"]);
  await takeOver();
  expect(openRuns.value.map(({ id }) => id)).toEqual(["run-1"]);
  expect(records.value.map(({ runId }) => runId)).toEqual(["run-1"]);
});

test("a window that is given the pen while it still opens waits until it can read", async () => {
  vi.resetModules();
  const reading = await import("../../app/reading.ts");
  const { layDesk: lay } = await import("../../app/desk.ts");
  const taken = reading.takeOver();
  lay({ ...desk(), device: "phone-b" });
  await expect(taken).resolves.toBeUndefined();
});

test("a database that the browser closed in the background is opened anew to follow the others", async () => {
  await append(db, "run-1", 0, log);
  layDesk({ ...desk(), device: "phone-b" });
  db.close();
  await readEverything();
  expect(openRuns.value.map(({ id }) => id)).toEqual(["run-1"]);
});

test("records that could not be read once are read when they are wanted next", async () => {
  await append(db, "run-1", 0, log);
  let silent = true;
  const read = db.getAll.bind(db);
  vi.spyOn(db, "getAll").mockImplementation((name, ...rest) =>
    silent && name === "records" ? Promise.reject(new Error("no answer")) : read(name, ...rest),
  );
  layDesk({ ...desk(), device: "phone-b" });
  await expect(readEverything()).rejects.toThrow("no answer");
  silent = false;
  await everyRecord();
  expect(records.value.map(({ runId }) => runId)).toEqual(["run-1"]);
});
