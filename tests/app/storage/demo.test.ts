import { beforeEach, expect, test } from "vitest";
import { inventedHistory } from "../../../app/demo/history/invented.ts";
import { demoSpecs } from "../../../app/demo/specs.ts";
import { french } from "../../../app/demo/words/fr.ts";
import { writeTo } from "../../../app/storage/books.ts";
import type { Database } from "../../../app/storage/database.ts";
import { addDemo, DEMO_RUN, type DemoLog, removeDemo } from "../../../app/storage/demo.ts";
import { storedRecord } from "../../../app/storage/rebuild.ts";
import { CUPBOARD } from "../../../core/spec/cupboard-table.ts";
import { append, everyEvent, everything, freshPhone } from "../../support/phone/phone-storage.ts";
import { bringIn, opened, textOf } from "../../support/world/backup-file.ts";
import { DEMO_SPECS, demoHistory } from "../../support/world/demo-bar.ts";
import { madeWhole, started } from "../../support/world/play-run.ts";

const NOW = Date.UTC(2026, 10, 26, 3);
const withRecords = (history: ReturnType<typeof demoHistory>): readonly DemoLog[] =>
  history.map((events) => {
    const record = storedRecord(events, 0);
    if (record === undefined) throw new RangeError("an invented log must have a record");
    return { events, record };
  });
const logs = withRecords(demoHistory(NOW));

let db: Database;
beforeEach(async () => {
  db = await freshPhone();
});

/** A batch of the house made from an invented spec: its own work, whatever the spec. */
const own = madeWhole(started("run-a", "PB-1", NOW - 9 * 86_400_000), {
  yield: 3700,
  topUp: 450,
  useBy: NOW,
}).events;

test("put in beside what is there and taken out again, everything else is as it was", async () => {
  await append(db, "run-a", 0, own);
  // Names on both sides of the invented ones, which no range may catch.
  await append(db, "demo-histora", 0, started("demo-histora", "X-1", NOW).events);
  await append(db, "demo-historz", 0, started("demo-historz", "X-2", NOW).events);
  const before = await everything(db);
  await addDemo(db, logs);
  expect(await db.count("records")).toBe(3 + logs.length);
  const removed = await removeDemo(db);
  expect([...removed].sort()).toEqual(logs.map(({ record }) => record.id).sort());
  expect(await everything(db)).toEqual(before);
});

test("what was added to an invented batch and its pictures go with it", async () => {
  await addDemo(db, logs);
  const id = `${DEMO_RUN}01`;
  const log = logs.find(({ record }) => record.id === id)?.events ?? [];
  const last = log.at(-1);
  if (last === undefined) throw new RangeError("the first invented batch has a log");
  const note = { ...last, id: "added", type: "note.added", text: "mine" } as const;
  await append(db, id, log.length, [note]);
  const picture = { id: "p", runId: id, at: NOW, type: "image/webp", width: 1, height: 1 };
  await db.put("photos", { ...picture, bytes: new ArrayBuffer(1) });
  await db.put("photos", { ...picture, id: "q", runId: "run-a", bytes: new ArrayBuffer(1) });
  await removeDemo(db);
  expect(await everyEvent(db)).toEqual([]);
  expect(await db.getAllKeys("photos")).toEqual(["q"]);
});

test("put in twice it is there once, and a batch that was changed keeps its change", async () => {
  await addDemo(db, logs);
  const once = await everything(db);
  await addDemo(db, logs);
  expect(await everything(db)).toEqual(once);
});

/** The failure and the lucky best: somebody wrote most about those. */
const written = (all: readonly DemoLog[]): readonly DemoLog[] =>
  all.filter(({ events }) => events.some(({ type }) => type === "note.added"));

test("a phone that has it in one language takes nothing of it from the file of another that has it in a second", async () => {
  const theirs = inventedHistory(NOW, french, new Map(CUPBOARD.map((one) => [one.id, one])));
  await addDemo(db, written(withRecords(theirs)));
  await writeTo(db, "specs", demoSpecs(french));
  await append(db, "run-a", 0, own);
  const file = await textOf(db);
  db = await freshPhone();
  const ours = written(logs);
  expect(ours).toHaveLength(2);
  await addDemo(db, ours);
  await writeTo(db, "specs", DEMO_SPECS);
  const [before, demo] = [await everyEvent(db), await db.getAll("records")];

  const { fresh, left, known } = await opened(db, file);
  expect([...fresh.events.keys()].sort()).toEqual(own.map(({ id }) => id).sort());
  expect(fresh.specs.size).toBe(0);
  // What the bar wrote, where its words are other ones; everything else is the same.
  expect(left.count + known).toBe(before.length + DEMO_SPECS.length);
  await bringIn(db, file);
  expect(await everyEvent(db)).toHaveLength(before.length + own.length);
  expect(await everyEvent(db)).toEqual(expect.arrayContaining([...before, ...own]));
  expect(await db.getAll("records")).toEqual(demo);
  expect(await db.getAll("specs")).toEqual(expect.arrayContaining([...DEMO_SPECS]));
  expect(await removeDemo(db)).toHaveLength(ours.length);
  expect(await everyEvent(db)).toEqual(expect.arrayContaining([...own]));
  expect(await everyEvent(db)).toHaveLength(own.length);
});

test("where there is none, nothing is removed", async () => {
  await append(db, "run-a", 0, own);
  const before = await everything(db);
  expect(await removeDemo(db)).toEqual([]);
  expect(await everything(db)).toEqual(before);
});
