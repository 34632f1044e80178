import { accepted, type Result, refused } from "../../core/quantity/result.ts";
import { eventSchema, type RunEvent } from "../../core/run/event.ts";
import type { Database, StoredRecord } from "./database.ts";
import { inOne } from "./in-one.ts";

/** A run's log as it is stored. */
export interface ReadLog {
  readonly runId: string;
  /** What was understood. */
  readonly events: readonly RunEvent[];
  /** How many entries were not: they stay stored. */
  readonly unread: number;
}

const understood = (stored: readonly unknown[]): readonly RunEvent[] =>
  stored.flatMap((entry) => {
    const checked = eventSchema.safeParse(entry);
    return checked.success ? [checked.data] : [];
  });

/** What a run's stored entries say. */
export function readLog(runId: string, stored: readonly unknown[]): ReadLog {
  const events = understood(stored);
  return { runId, events, unread: stored.length - events.length };
}

/** The events of one run, as stored now. */
export const readRun = async (db: Database, runId: string): Promise<ReadLog> =>
  readLog(runId, await db.getAllFromIndex("events", "runId", runId));

/** The logs of the batches being made, and nothing of the others. */
export async function readOpenRuns(db: Database): Promise<readonly ReadLog[]> {
  const ids = await db.getAllKeysFromIndex("records", "openSince");
  return Promise.all(ids.map((id) => readRun(db, id)));
}

/** Why events were not appended. */
export type AppendRefusal = "log-has-moved-on";

/** What one act adds to a run. */
export interface Addition {
  /** How many entries of the run there were when it was decided, understood or not. */
  readonly expected: number;
  readonly events: readonly RunEvent[];
  /** The run's record with these events in it. */
  readonly record: StoredRecord;
}

/**
 * Appends events of one run and replaces its record in one transaction, flushed to disk before it
 * resolves. Another window or an import may have added something since: then nothing is written and
 * the caller decides again.
 *
 * @throws DOMException when the phone could not store them: nothing was written
 */
export async function appendEvents(
  db: Database,
  { expected, events, record }: Addition,
): Promise<Result<number, AppendRefusal>> {
  const tx = db.transaction(["events", "records"], "readwrite", { durability: "strict" });
  return inOne(tx, async () => {
    const log = tx.objectStore("events");
    const found = await log.index("runId").count(record.id);
    if (found !== expected) return refused("log-has-moved-on", { expected, found });
    await Promise.all([
      tx.objectStore("records").put(record),
      ...events.map(async (event) => log.add(event)),
    ]);
    return accepted(found + events.length);
  });
}
