import { useEffect, useState } from "preact/hooks";
import { atDesk } from "./desk.ts";
import { everyRecord } from "./reading.ts";
import { records, recordsRead, settings } from "./state.ts";
import { backupDue, countEvents } from "./storage/backup/since.ts";
import { sayLater } from "./words/say-later.ts";

async function counted(): Promise<number> {
  await everyRecord();
  return countEvents(atDesk().db);
}

/** A sentence when it is time for a backup of this phone; nothing while it is not, or not known. */
export function useBackupDue(): string | undefined {
  const [events, setEvents] = useState<number>();
  const all = records.value;
  useEffect(() => {
    // A reminder that cannot be worked out is not shown: storage that is silent says so elsewhere.
    void counted().then(setEvents, () => undefined);
    // Counted anew when a batch grows, but not at every part of the first reading.
  }, [recordsRead.value && all]);
  if (events === undefined) return undefined;
  const due = backupDue(all, events, settings.value);
  if (due === undefined) return undefined;
  const words = sayLater.kit.backup;
  const ever = settings.value.lastBackupAt > 0;
  return due.ended > 0 ? words.dueEnded(due.ended, ever) : words.dueEntries(due.entries, ever);
}
