import { recordOf } from "../../core/logbook/record.ts";
import type { RunEvent } from "../../core/run/event.ts";
import { foldRun } from "../../core/run/fold.ts";
import { endingOf } from "../../core/run/run.ts";
import type { Database, StoredRecord } from "./database.ts";
import { inOne } from "./in-one.ts";
import { markTrue, type Stale, shapeIsNow } from "./records.ts";
import { readLog } from "./run-log.ts";

/** So many runs are worked out before they are written. */
const AT_ONCE = 50;

/**
 * The record of a run as it is stored.
 *
 * @param unread - stored events of it that were not understood
 * @returns nothing while the start of the run is unknown
 */
export function storedRecord(
  events: readonly RunEvent[],
  unread: number,
): StoredRecord | undefined {
  const run = foldRun(events);
  if (run === undefined) return undefined;
  const open = endingOf(run) === undefined ? { openSince: run.startedAt } : {};
  return { id: run.id, ...open, unread, record: recordOf(run) };
}

async function everyRun(db: Database): Promise<readonly string[]> {
  const ids: string[] = [];
  let cursor = await db
    .transaction("events")
    .store.index("runId")
    .openKeyCursor(null, "nextunique");
  while (cursor !== null) {
    ids.push(cursor.key);
    cursor = await cursor.continue();
  }
  return ids;
}

/**
 * Read and written in one transaction: an act that is stored meanwhile comes wholly before or after,
 * and its record is never put back to what it was.
 */
async function rebuildSome(db: Database, runIds: readonly string[]): Promise<void> {
  const tx = db.transaction(["events", "records", "settings"], "readwrite");
  const [log, records] = [tx.objectStore("events").index("runId"), tx.objectStore("records")];
  await inOne(tx, async () => {
    // One after the other: between two of them the page gets its turn.
    for (const id of runIds) {
      const { events, unread } = readLog(id, await log.getAll(id));
      const record = storedRecord(events, unread);
      if (record !== undefined) await records.put(record);
    }
    await markTrue(tx.objectStore("settings"), runIds);
  });
}

/**
 * Works records out anew from the log: after an import, and once after an update that says more in
 * them. Killed half way it begins again, for only the end of it says that they are true.
 *
 * @param onPart - called with how many of how many runs are done
 */
export async function rebuildRecords(
  db: Database,
  stale: Stale,
  onPart: (done: number, all: number) => void = () => undefined,
): Promise<void> {
  const runIds = stale === "all" ? await everyRun(db) : stale;
  for (let at = 0; at < runIds.length; at += AT_ONCE) {
    onPart(at, runIds.length);
    await rebuildSome(db, runIds.slice(at, at + AT_ONCE));
  }
  await shapeIsNow(db);
}
