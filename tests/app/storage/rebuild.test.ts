import { beforeEach, expect, test } from "vitest";
import type { Database } from "../../../app/storage/database.ts";
import { rebuildRecords, storedRecord } from "../../../app/storage/rebuild.ts";
import { markStale, staleRecords } from "../../../app/storage/records.ts";
import { appendEvents } from "../../../app/storage/run-log.ts";
import { append, freshPhone } from "../../support/phone/phone-storage.ts";
import { started } from "../../support/world/play-run.ts";

const events = started("run-a", "PB-1", 1_764_000_000_000).finish().events;
const record = storedRecord(events, 0);
if (record === undefined) throw new RangeError("a run that starts has a record");
const [first, last] = [events.slice(0, -1), events.slice(-1)];

let db: Database;
beforeEach(async () => {
  db = await freshPhone();
  await append(db, "run-a", 0, first);
});

/** One turn of the phone: what waits for it goes on. */
const turn = () =>
  new Promise<void>((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(undefined);
  });

/** A while that is told in turns of the phone, so that two works meet at every point. */
const turns = async (count: number): Promise<void> => {
  for (let at = 0; at < count; at += 1) await turn();
};

test.each(Array.from({ length: 16 }, (_, at) => at))(
  "an act that is stored %i turns into the work keeps its record",
  async (count) => {
    const work = rebuildRecords(db, ["run-a"]);
    await turns(count);
    const act = { expected: first.length, events: last, record };
    expect(await appendEvents(db, act)).toMatchObject({ ok: true });
    await work;
    expect(await db.get("records", "run-a")).toEqual(record);
  },
);

test.each(Array.from({ length: 24 }, (_, at) => at))(
  "a run that grows by an import %i turns into the work is worked out with it, or again",
  async (count) => {
    await rebuildRecords(db, "all");
    await markStale(db.transaction("settings", "readwrite").store, ["run-a"]);
    const work = rebuildRecords(db, ["run-a"]);
    await turns(count);
    const tx = db.transaction(["events", "settings"], "readwrite");
    for (const event of last) await tx.objectStore("events").add(event);
    await markStale(tx.objectStore("settings"), ["run-a"]);
    await tx.done;
    await work;
    const right = JSON.stringify(await db.get("records", "run-a")) === JSON.stringify(record);
    expect(right || (await staleRecords(db))?.includes("run-a")).toBe(true);
  },
);

test("a phone without a log has nothing to work out, now or at the next start", async () => {
  await db.clear("events");
  await db.delete("settings", "records");
  expect(await staleRecords(db)).toBeUndefined();
  await append(db, "run-a", 0, first);
  expect(await staleRecords(db)).toBeUndefined();
});

test("logs that came without records are all worked out", async () => {
  await db.delete("settings", "records");
  expect(await staleRecords(db)).toBe("all");
});
