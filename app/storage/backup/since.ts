import type { BatchRecord } from "../../../core/logbook/record.ts";
import type { Database } from "../database.ts";
import { DEMO_RUN } from "../demo.ts";
import type { Settings } from "../settings.ts";

/** After so many new entries a backup is asked for, though no batch has ended: judgement. */
const MANY = 25;

/** What no backup of this phone holds yet. */
export interface SinceBackup {
  /** Batches that were finished or given up. */
  readonly ended: number;
  /** Entries of logs, confirmed here or brought in. */
  readonly entries: number;
}

/** How many entries the logs have, but for those of the invented history. */
export async function countEvents(db: Database): Promise<number> {
  const tx = db.transaction("events");
  const invented = IDBKeyRange.bound(DEMO_RUN, `${DEMO_RUN}\uffff`);
  const [all, theirs] = await Promise.all([
    tx.store.count(),
    tx.store.index("runId").count(invented),
  ]);
  return all - theirs;
}

/**
 * Whether it is time for a backup.
 *
 * @param events - entries of all logs now
 * @returns what has come since the last one, or nothing while that is little
 */
export function backupDue(
  records: readonly Pick<BatchRecord, "runId" | "ending">[],
  events: number,
  { lastBackupAt, eventsAtBackup }: Pick<Settings, "lastBackupAt" | "eventsAtBackup">,
): SinceBackup | undefined {
  const ended = records.filter(
    ({ runId, ending }) =>
      ending !== undefined && ending.at > lastBackupAt && !runId.startsWith(DEMO_RUN),
  );
  const entries = Math.max(0, events - eventsAtBackup);
  if (ended.length === 0 && entries < MANY) return undefined;
  return { ended: ended.length, entries };
}
