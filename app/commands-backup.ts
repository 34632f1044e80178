import { type Result, refused } from "../core/quantity/result.ts";
import { saveSettings } from "./commands.ts";
import { atDesk, onOpen, type StoreRefusal, store, why } from "./desk.ts";
import { readEverything } from "./reading.ts";
import type { BackupRefusal } from "./storage/backup/header.ts";
import { type Added, importBackup } from "./storage/backup/import.ts";
import { type OpenedBackup, openBackup } from "./storage/backup/open.ts";
import type { Work } from "./storage/backup/pace.ts";
import { fileOf, type MadeBackup, type Records, writeBackup } from "./storage/backup/write.ts";

/** Who watches long work, and may give it up. */
export type Watch = Pick<Work, "signal" | "onPart">;

/** Why long work came to nothing. */
export type Stopped = "storage-silent" | "backup-given-up";

const workOf = (watch: Watch): Work => ({ ...watch, mono: atDesk().clock.mono });

/** Does something long that the page does not hold in memory. */
export async function longWork<Value>(
  watch: Watch,
  work: (at: Work) => Promise<Value>,
): Promise<Result<Value, Stopped>> {
  try {
    return { ok: true, value: await work(workOf(watch)) };
  } catch (error) {
    if (watch.signal.aborted) return refused("backup-given-up");
    return refused("storage-silent", { why: why(error) });
  }
}

/** Everything the phone keeps, as one file. */
export function makeBackup(watch: Watch): Promise<Result<MadeBackup, Stopped>> {
  const maker = { madeAt: atDesk().clock.now(), app: __APP_VERSION__ };
  return longWork(watch, (work) => onOpen((db) => writeBackup(db, maker, work)));
}

/** Notes that a backup was shared, or that saving it was begun: from here on it is counted anew. */
export const noteBackup = ({ madeAt, events }: MadeBackup): Promise<Result<void, StoreRefusal>> =>
  saveSettings({ lastBackupAt: madeAt, eventsAtBackup: events });

/** Some records as the text of a file, for another phone. */
export const makeParcel = (records: Records): Promise<string> =>
  fileOf(records, { madeAt: atDesk().clock.now(), app: __APP_VERSION__ });

/** Reads a backup file and says what it would bring; stores nothing. */
export async function readBackup(
  file: Blob,
  watch: Watch,
): Promise<Result<OpenedBackup, BackupRefusal | Stopped>> {
  const read = await longWork(watch, (work) => onOpen((db) => openBackup(db, file, work)));
  return read.ok ? read.value : read;
}

/** Why nothing was added, or why what was added does not show yet. */
export type TakeRefusal = StoreRefusal | "backup-given-up" | "backup-added-unread";

/**
 * Adds what a backup brings to what is here: nothing here is overwritten or lost.
 *
 * @param onStored - called when all of it is stored: from here on batches are counted, and nothing
 *   can be given up any more
 */
export async function takeBackup(
  { fresh }: Pick<OpenedBackup, "fresh">,
  watch: Watch,
  onStored: () => void,
): Promise<Result<Added, TakeRefusal>> {
  const written = await store(async (db) => {
    try {
      return await importBackup(db, fresh, workOf(watch));
    } catch (error) {
      // Somebody gave it up: that is no failure to store.
      if (watch.signal.aborted) return undefined;
      throw error;
    }
  });
  if (!written.ok) return written;
  if (written.value === undefined) return refused("backup-given-up");
  onStored();
  try {
    await readEverything(watch.onPart);
  } catch (error) {
    return refused("backup-added-unread", { why: why(error) });
  }
  atDesk().announce({ stored: "everything" });
  return { ok: true, value: written.value };
}
