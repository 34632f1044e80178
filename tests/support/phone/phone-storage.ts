import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";
import { type Database, openDatabase } from "../../../app/storage/database.ts";
import { storedRecord } from "../../../app/storage/rebuild.ts";
import { appendEvents, readRun } from "../../../app/storage/run-log.ts";
import type { RunEvent } from "../../../core/run/event.ts";

/** An empty phone, as after the first start. */
export async function freshPhone(): Promise<Database> {
  globalThis.indexedDB = new IDBFactory();
  return openAgain();
}

/** Another window of the app on the same phone. */
export const openAgain = async (): Promise<Database> =>
  (await openDatabase({ onSuperseded: () => undefined, onLost: () => undefined })).db;

/** Appends to a run as an act does: with the record of the whole log. */
export async function append(
  db: Database,
  runId: string,
  expected: number,
  events: readonly RunEvent[],
): ReturnType<typeof appendEvents> {
  const log = await readRun(db, runId);
  const record = storedRecord([...log.events, ...events], log.unread);
  if (record === undefined) throw new RangeError("a run starts with its start");
  return appendEvents(db, { expected, events, record });
}

/** Every event on the phone that is understood. */
export async function everyEvent(db: Database): Promise<readonly RunEvent[]> {
  const ids = new Set((await db.getAll("events")).map(({ runId }) => runId));
  const logs = await Promise.all([...ids].map((id) => readRun(db, id)));
  return logs.flatMap(({ events }) => events);
}

const STORES = [
  "events",
  "specs",
  "ingredients",
  "procedures",
  "planned",
  "settings",
  "records",
] as const;

/** Everything stored, to show that something changed nothing. */
export function everything(db: Database): Promise<unknown> {
  return Promise.all(STORES.map((name) => db.getAll(name)));
}
