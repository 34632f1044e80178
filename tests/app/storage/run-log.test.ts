import { beforeEach, expect, test, vi } from "vitest";
import type { Database } from "../../../app/storage/database.ts";
import { readOpenRuns, readRun } from "../../../app/storage/run-log.ts";
import {
  append,
  everyEvent,
  everything,
  freshPhone,
  openAgain,
} from "../../support/phone/phone-storage.ts";
import { madeWhole, started } from "../../support/world/play-run.ts";

const MADE = Date.parse("2025-11-25T10:00:00Z");
const MEASURED = { yield: 3700, topUp: 450, useBy: MADE + 6 * 86_400_000 };
const begun = started("run-a", "PB-2511", MADE);
const built = begun.finish();
const noted = begun.then({ type: "add-note", text: "cold in the undercroft" });
const first = begun.events;
const next = built.events.slice(first.length);
const other = noted.events.slice(first.length).map((event) => ({ ...event, id: `b-${event.id}` }));

let db: Database;
beforeEach(async () => {
  db = await freshPhone();
});

test("what is appended is read back, whole and per run", async () => {
  const elsewhere = started("run-b", "PB-2611", MADE).events;
  expect(await append(db, "run-a", 0, first)).toEqual({ ok: true, value: first.length });
  expect(await append(db, "run-b", 0, elsewhere)).toMatchObject({ ok: true });
  expect(await everyEvent(db)).toHaveLength(first.length + elsewhere.length);
  expect(await readRun(db, "run-a")).toEqual({ runId: "run-a", events: first, unread: 0 });
});

test("a decision made on an older log is turned away, and nothing is written", async () => {
  await append(db, "run-a", 0, first);
  const before = await everything(db);
  const late = await append(db, "run-a", first.length - 1, next);
  expect(late).toEqual({
    ok: false,
    refusal: "log-has-moved-on",
    about: { expected: first.length - 1, found: first.length },
  });
  expect(await everything(db)).toEqual(before);
});

test("of two windows that decide on the same log at once, one writes and one is turned away", async () => {
  const window2 = await openAgain();
  await append(db, "run-a", 0, first);
  const results = await Promise.all([
    append(db, "run-a", first.length, next),
    append(window2, "run-a", first.length, other),
  ]);
  expect(results.map(({ ok }) => ok).sort()).toEqual([false, true]);
  const { events: stored } = await readRun(db, "run-a");
  const won = results[0].ok ? next : other;
  expect(stored).toHaveLength(first.length + won.length);
  expect(stored).toEqual(expect.arrayContaining([...won]));
});

test("an event that is already there stops the whole append", async () => {
  await append(db, "run-a", 0, first);
  const before = await everything(db);
  const [known] = first;
  if (known === undefined) throw new RangeError("a run starts with an event");
  await expect(append(db, "run-a", first.length, [...next, known])).rejects.toThrow();
  expect(await everything(db)).toEqual(before);
});

test("every write asks to be flushed to disk", async () => {
  const asked = vi.spyOn(IDBDatabase.prototype, "transaction");
  await append(db, "run-a", 0, first);
  const writes = asked.mock.calls.filter(([, mode]) => mode === "readwrite");
  expect(writes).toEqual([[["events", "records"], "readwrite", { durability: "strict" }]]);
  asked.mockRestore();
});

test("entries that this version cannot read stay, are counted, and stop nobody from writing", async () => {
  await append(db, "run-a", 0, first);
  const odd = { id: "odd", runId: "run-a", type: "moon.waxed", v: 9 };
  await db.put("events", odd);
  expect(await readRun(db, "run-a")).toEqual({ runId: "run-a", events: first, unread: 1 });
  expect(await append(db, "run-a", first.length + 1, next)).toMatchObject({ ok: true });
  expect(await db.get("events", "odd")).toEqual(odd);
});

test("of all batches, only the logs of those being made are read at the start", async () => {
  const ended = madeWhole(started("run-b", "PB-2611", MADE), MEASURED).events;
  await append(db, "run-a", 0, first);
  await append(db, "run-b", 0, ended);
  expect((await readOpenRuns(db)).map(({ runId }) => runId)).toEqual(["run-a"]);
  const given = built.then({ type: "abandon", reason: "spilt" }).events;
  await append(db, "run-a", first.length, given.slice(first.length));
  expect(await readOpenRuns(db)).toEqual([]);
});
