import type { BatchRecord } from "../../../core/logbook/record.ts";
import { PRACTICE_RUN } from "../../practice.ts";
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

/** How many entries the logs have, but for those of the invented history and of practice. */
export async function countEvents(db: Database): Promise<number> {
  const tx = db.transaction("events");
  const called = (prefix: string) =>
    tx.store.index("runId").count(IDBKeyRange.bound(prefix, `${prefix}\uffff`));
  const [all, invented, practised] = await Promise.all([
    tx.store.count(),
    called(DEMO_RUN),
    called(PRACTICE_RUN),
  ]);
  return all - invented - practised;
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
