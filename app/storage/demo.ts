import type { RunEvent } from "../../core/run/event.ts";
import { PRACTICE_RUN } from "../practice.ts";
import type { Database, StoredRecord } from "./database.ts";
import { inOne } from "./in-one.ts";

/** Runs of the invented history, and no others, are called so. */
export const DEMO_RUN = "demo-history-";

/** One invented batch, with its record. */
export interface DemoLog {
  readonly events: readonly RunEvent[];
  readonly record: StoredRecord;
}

const calledSo = (prefix: string): IDBKeyRange => IDBKeyRange.bound(prefix, `${prefix}\uffff`);

/**
 * Stores the invented history in one transaction. A batch of it that is there already stays as it is.
 *
 * @throws DOMException when the phone could not store it: nothing was written
 */
export async function addDemo(db: Database, logs: readonly DemoLog[]): Promise<void> {
  const tx = db.transaction(["events", "records"], "readwrite", { durability: "strict" });
  const events = tx.objectStore("events");
  await inOne(tx, async () => {
    for (const { events: log, record } of logs) {
      if ((await events.index("runId").count(record.id)) > 0) continue;
      for (const event of log) await events.add(event);
      await tx.objectStore("records").put(record);
    }
  });
}

/**
 * Removes the invented history, or a practice: logs, records and pictures, in one transaction, and
 * nothing else. Nowhere else is an event ever deleted.
 *
 * @param prefix - how the runs' ids begin
 * @returns the runs that are gone
 * @throws DOMException when the phone could not: then nothing was removed
 */
export async function removeDemo(db: Database, prefix = DEMO_RUN): Promise<readonly string[]> {
  const tx = db.transaction(["events", "records", "photos"], "readwrite", { durability: "strict" });
  const theirs = calledSo(prefix);
  const gone = new Set<string>();
  await inOne(tx, async () => {
    for (const name of ["events", "photos"] as const) {
      const store = tx.objectStore(name);
      for (const one of await store.index("runId").getAll(theirs)) {
        gone.add(one.runId);
        await store.delete(one.id);
      }
    }
    await tx.objectStore("records").delete(theirs);
  });
  return [...gone];
}

/**
 * Removes every practice that is over: it was kept only for as long as somebody looked at it.
 *
 * @param isLookedAt - whether somebody has a run before them now: that one stays until the next start
 */
export async function removeEndedPractice(
  db: Database,
  isLookedAt: (runId: string) => boolean,
): Promise<void> {
  const all = await db.getAll("records", calledSo(PRACTICE_RUN));
  for (const { id, openSince } of all) {
    if (openSince === undefined && !isLookedAt(id)) await removeDemo(db, id);
  }
}
