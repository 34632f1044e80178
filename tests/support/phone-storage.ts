import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";
import { type Database, openDatabase } from "../../app/storage/database.ts";

/** An empty phone, as after the first start. */
export async function freshPhone(): Promise<Database> {
  globalThis.indexedDB = new IDBFactory();
  return openAgain();
}

/** Another window of the app on the same phone. */
export const openAgain = (): Promise<Database> =>
  openDatabase({ onSuperseded: () => undefined, onLost: () => undefined });

const SHELVES = ["events", "specs", "ingredients", "procedures", "planned", "settings"] as const;

/** Everything stored, to show that something changed nothing. */
export function everything(db: Database): Promise<unknown> {
  return Promise.all(SHELVES.map((name) => db.getAll(name)));
}
