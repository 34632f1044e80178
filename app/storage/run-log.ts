import { accepted, type Result, refused } from "../../core/quantity/result.ts";
import { eventSchema, type RunEvent } from "../../core/run/event.ts";
import type { Database } from "./database.ts";

/** Everything read from the log: what was understood, and how many entries were not. */
export interface ReadLog {
  readonly events: readonly RunEvent[];
  readonly unread: number;
}

const understood = (stored: readonly unknown[]): readonly RunEvent[] =>
  stored.flatMap((entry) => {
    const checked = eventSchema.safeParse(entry);
    return checked.success ? [checked.data] : [];
  });

/** Reads every event, setting aside what this version does not understand (it stays stored). */
export async function readLog(db: Database): Promise<ReadLog> {
  const stored = await db.getAll("events");
  const events = understood(stored);
  return { events, unread: stored.length - events.length };
}

/** Why events were not appended. */
export type AppendRefusal = "log-has-moved-on";

/**
 * Appends events of one run in one transaction, flushed to disk before it resolves.
 *
 * @param expectedCount - how many events of the run the decision was made on; another tab or an
 *   import may have added some since, and then the caller decides again
 * @throws DOMException when the phone could not store them: nothing was written
 */
export async function appendEvents(
  db: Database,
  runId: string,
  expectedCount: number,
  events: readonly RunEvent[],
): Promise<Result<number, AppendRefusal>> {
  const tx = db.transaction("events", "readwrite", { durability: "strict" });
  // What this version does not understand was no part of the decision, so it is not counted.
  const count = understood(await tx.store.index("runId").getAll(runId)).length;
  if (count !== expectedCount) {
    await tx.done;
    return refused("log-has-moved-on", { expected: expectedCount, found: count });
  }
  await Promise.all([...events.map((event) => tx.store.add(event)), tx.done]);
  return accepted(count + events.length);
}

/** The events of one run, as stored now. */
export async function readRun(db: Database, runId: string): Promise<readonly RunEvent[]> {
  return understood(await db.getAllFromIndex("events", "runId", runId));
}
