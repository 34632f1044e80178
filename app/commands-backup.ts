import { type Result, refused } from "../core/quantity/result.ts";
import { atDesk, readEverything, store, why } from "./commands.ts";
import {
  type Backup,
  type BackupNews,
  type BackupRefusal,
  compareBackup,
  fileOf,
  importBackup,
  type Records,
  readBackup,
  writeBackup,
} from "./storage/backup.ts";

/** Reads something that the page does not hold in memory. */
async function fetchStored<Value>(
  read: () => Promise<Value>,
): Promise<Result<Value, "storage-silent">> {
  try {
    return { ok: true, value: await read() };
  } catch (error) {
    return refused("storage-silent", { why: why(error) });
  }
}

/** Everything the phone keeps, as the text of one file. */
export function makeBackup(): Promise<Result<string, "storage-silent">> {
  const { db, clock } = atDesk();
  return fetchStored(() => writeBackup(db, clock.now(), __APP_VERSION__));
}

/** Some records as the text of a file, for another phone. */
export const makeParcel = (records: Records): Promise<string> =>
  fileOf(records, atDesk().clock.now(), __APP_VERSION__);

/** A backup that was understood, and what adding it would do. */
export interface OpenedBackup extends BackupNews {
  readonly backup: Backup;
}

/** Reads the text of a backup file and counts what it would bring; stores nothing. */
export async function openBackup(
  text: string,
): Promise<Result<OpenedBackup, BackupRefusal | "storage-silent">> {
  const read = await readBackup(text);
  if (!read.ok) return read;
  const backup = read.value;
  const news = await fetchStored(() => compareBackup(atDesk().db, backup));
  return news.ok ? { ok: true, value: { backup, ...news.value } } : news;
}

/** Adds what a backup holds to what is here: nothing here is overwritten or lost. */
export async function takeBackup(backup: Backup): Promise<Result<number, "not-saved">> {
  const written = await store((db) => importBackup(db, backup));
  if (written.ok) await readEverything();
  return written;
}
