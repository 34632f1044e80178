import { type DBSchema, type IDBPDatabase, openDB } from "idb";

// Renaming the database or a store loses people's logs: never change these words.
const NAME = "second-pour";
const VERSION = 1;

/** What the phone keeps. Values are checked on the way out, so they are unknown until then. */
export interface Shelves extends DBSchema {
  events: { key: string; value: { id: string; runId: string }; indexes: { runId: string } };
  specs: { key: string; value: { id: string } };
  ingredients: { key: string; value: { id: string } };
  settings: { key: string; value: unknown };
}

/** The open database. */
export type Database = IDBPDatabase<Shelves>;

/** What the caller wants to hear about the connection. */
export interface DatabaseNews {
  /** A newer version of the app wants to open it in another window: this one must let go. */
  readonly onSuperseded: () => void;
  /** The browser closed it under us. */
  readonly onLost: () => void;
}

/**
 * Opens the phone's database, creating or upgrading it. Upgrades only ever add.
 *
 * @throws DOMException when the browser refuses storage
 */
export function openDatabase(news: DatabaseNews): Promise<Database> {
  return openDB<Shelves>(NAME, VERSION, {
    upgrade(db, oldVersion) {
      if (oldVersion < 1) {
        db.createObjectStore("events", { keyPath: "id" }).createIndex("runId", "runId");
        db.createObjectStore("specs", { keyPath: "id" });
        db.createObjectStore("ingredients", { keyPath: "id" });
        db.createObjectStore("settings");
      }
    },
    blocking(_current, _blocked, event) {
      if (event.target instanceof IDBDatabase) event.target.close();
      news.onSuperseded();
    },
    terminated: news.onLost,
  });
}
