import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import type { BatchRecord } from "../../core/logbook/record.ts";

// Renaming the database or a store loses people's logs: never change these words.
const NAME = "second-pour";
const VERSION = 3;

interface Store {
  key: string;
  value: { id: string };
}

/** What the phone keeps. Values are checked on the way out, so they are unknown until then. */
export interface Stores extends DBSchema {
  events: { key: string; value: { id: string; runId: string }; indexes: { runId: string } };
  specs: Store;
  ingredients: Store;
  /** The house's own procedures. */
  procedures: Store;
  /** Batches that are planned and not begun. */
  planned: Store;
  settings: { key: string; value: unknown };
  /** What lists need of each batch, worked out from its events. */
  records: { key: string; value: StoredRecord; indexes: { openSince: number } };
  /** Pictures of batches; their events say when and whose. */
  photos: { key: string; value: StoredPhoto; indexes: { runId: string } };
}

/** A batch's record beside its log, written together with every event. */
export interface StoredRecord {
  /** Of the run. */
  readonly id: string;
  /** Only while the batch is being made: so that these are found without reading the others. */
  readonly openSince?: number;
  /** Stored events of the run that this version does not understand. */
  readonly unread: number;
  readonly record: BatchRecord;
}

/** A picture as it is kept. */
export interface StoredPhoto {
  readonly id: string;
  readonly runId: string;
  /** Epoch ms. */
  readonly at: number;
  /** Media type. */
  readonly type: string;
  readonly bytes: ArrayBuffer;
  readonly width: number;
  readonly height: number;
}

/** The open database. */
export type Database = IDBPDatabase<Stores>;

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
  (db) => {
    db.createObjectStore("records", { keyPath: "id" }).createIndex("openSince", "openSince");
    db.createObjectStore("photos", { keyPath: "id" }).createIndex("runId", "runId");
  },
];

/** A database on this phone, and whether this version may write in it. */
export interface Opened {
  readonly db: Database;
  /** A newer version of the app has added to it: only reading is safe. */
  readonly newer: boolean;
}

const isNewer = (error: unknown): boolean =>
  error instanceof DOMException && error.name === "VersionError";

/**
 * Opens the phone's database, creating or upgrading it. Upgrades only ever add. One that a newer
 * version has written is opened as it stands, to be read only: what this version knows is in it.
 *
 * @throws DOMException when the browser refuses storage
 */
export async function openDatabase(news: DatabaseNews): Promise<Opened> {
  const letGo = {
    blocking(_current: number, _blocked: number | null, event: IDBVersionChangeEvent) {
      if (event.target instanceof IDBDatabase) event.target.close();
      news.onSuperseded();
    },
    terminated: news.onLost,
  };
  try {
    const db = await openDB<Stores>(NAME, VERSION, {
      ...letGo,
      upgrade(upgraded, oldVersion) {
        for (const step of STEPS.slice(oldVersion)) step(upgraded);
      },
    });
    return { db, newer: false };
  } catch (error) {
    if (!isNewer(error)) throw error;
    return { db: await openDB<Stores>(NAME, undefined, letGo), newer: true };
  }
}
