import { type DBSchema, type IDBPDatabase, openDB } from "idb";

// Renaming the database or a store loses people's logs: never change these words.
const NAME = "second-pour";
const VERSION = 2;

interface Shelf {
  key: string;
  value: { id: string };
}

/** What the phone keeps. Values are checked on the way out, so they are unknown until then. */
export interface Shelves extends DBSchema {
  events: { key: string; value: { id: string; runId: string }; indexes: { runId: string } };
  specs: Shelf;
  ingredients: Shelf;
  /** The house's own procedures. */
  procedures: Shelf;
  /** Batches that are planned and not begun. */
  planned: Shelf;
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
 * What each version added. A phone may come from any of them: a step is never changed once it has
 * been shipped, and only ever adds.
 */
const STEPS: readonly ((db: Database) => void)[] = [
  (db) => {
    db.createObjectStore("events", { keyPath: "id" }).createIndex("runId", "runId");
    db.createObjectStore("specs", { keyPath: "id" });
    db.createObjectStore("ingredients", { keyPath: "id" });
    db.createObjectStore("settings");
  },
  (db) => {
    db.createObjectStore("procedures", { keyPath: "id" });
    db.createObjectStore("planned", { keyPath: "id" });
  },
];

/**
 * Opens the phone's database, creating or upgrading it. Upgrades only ever add.
 *
 * @throws DOMException when the browser refuses storage
 */
export function openDatabase(news: DatabaseNews): Promise<Database> {
  return openDB<Shelves>(NAME, VERSION, {
    upgrade(db, oldVersion) {
      for (const step of STEPS.slice(oldVersion)) step(db);
    },
    blocking(_current, _blocked, event) {
      if (event.target instanceof IDBDatabase) event.target.close();
      news.onSuperseded();
    },
    terminated: news.onLost,
  });
}
