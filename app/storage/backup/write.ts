import { isPractice } from "../../practice.ts";
import type { Database } from "../database.ts";
import { DEMO_RUN } from "../demo.ts";
import { headerLine } from "./header.ts";
import { everyKey } from "./keys.ts";
import { KINDS, STORES, type StoreName } from "./kinds.ts";
import { Pace, type Work } from "./pace.ts";
import { isObject } from "./same.ts";
import { Sha256 } from "./sha256.ts";

/** So much is handed to the browser at a time, which may keep it outside the page's memory, bytes. */
const PART = 4 * 1024 * 1024;

/** A backup file that was made. */
export interface MadeBackup {
  readonly file: Blob;
  readonly madeAt: number;
  /** Records in it. */
  readonly count: number;
  /** Events among them, but for the invented ones. */
  readonly events: number;
}

/** What a file says of itself. */
export interface Maker {
  /** Epoch ms. */
  readonly madeAt: number;
  /** Version of the app. */
  readonly app: string;
}

const runIdOf = (record: unknown): string =>
  isObject(record) && "runId" in record ? String(record.runId) : "";

/** Whether an event is of a batch that somebody really made. */
const isOwn = (event: unknown): boolean => !runIdOf(event).startsWith(DEMO_RUN);

/** A file that grows line by line. */
class BackupFile {
  readonly #encoder = new TextEncoder();
  readonly #sum = new Sha256();
  readonly #parts: Blob[] = [];
  #open: Uint8Array<ArrayBuffer>[] = [];
  #size = 0;
  count = 0;
  events = 0;

  add(store: StoreName, record: unknown): void {
    const { line: kind, write } = KINDS[store];
    const said = write !== undefined && isObject(record) ? write(record) : record;
    const line = JSON.stringify({ [kind]: said });
    const bytes = this.#encoder.encode(this.count === 0 ? line : `\n${line}`);
    this.#sum.take(bytes);
    this.#open.push(bytes);
    this.#size += bytes.length;
    this.count += 1;
    if (store === "events" && isOwn(record)) this.events += 1;
    if (this.#size >= PART) this.#close();
  }

  close({ madeAt, app }: Maker): Blob {
    this.#close();
    const header = headerLine({ madeAt, lines: this.count, sha256: this.#sum.sum() }, app);
    return new Blob([`${header}\n`, ...this.#parts, "\n"], { type: "text/plain" });
  }

  #close(): void {
    this.#parts.push(new Blob(this.#open));
    this.#open = [];
    this.#size = 0;
  }
}

/** What is to stand in a file, before any of it is checked. */
export type Records = Readonly<Partial<Record<StoreName, readonly unknown[]>>>;

/** A few records as the text of one file. */
export function fileOf(records: Records, maker: Maker): Promise<string> {
  const file = new BackupFile();
  for (const store of STORES) for (const record of records[store] ?? []) file.add(store, record);
  return file.close(maker).text();
}

interface Plan {
  readonly store: StoreName;
  readonly ids: readonly string[];
}

/** Every id there is at one moment: what is added while the file is written stays out of it. */
async function idsNow(db: Database): Promise<readonly Plan[]> {
  const tx = db.transaction(STORES);
  const all = await Promise.all(STORES.map((store) => everyKey(tx.objectStore(store))));
  return STORES.map((store, at) => ({ store, ids: all[at] ?? [] }));
}

async function* recordsOf(db: Database, { store, ids }: Plan) {
  const { atOnce } = KINDS[store];
  for (let at = 0; at < ids.length; at += atOnce) {
    const some = ids.slice(at, at + atOnce);
    const [first = "", last = first] = [some[0], some.at(-1)];
    const wanted = new Set(some);
    const found = await db.getAll(store, IDBKeyRange.bound(first, last));
    // Practice is nothing to keep: it would come back with the file.
    yield found.filter((one) => wanted.has(one.id) && !isPractice(runIdOf(one)));
  }
}

/**
 * Everything the phone keeps, as one file: also what this version does not understand, so that a
 * newer one can read it back. An act that is stored while it is written is in it wholly or not.
 *
 * @throws DOMException when the storage does not answer, or `AbortError` when it was given up
 */
export async function writeBackup(db: Database, maker: Maker, work: Work): Promise<MadeBackup> {
  const pace = new Pace(work);
  const plans = await idsNow(db);
  const all = plans.reduce((sum, { ids }) => sum + ids.length, 0);
  const file = new BackupFile();
  for (const plan of plans) {
    for await (const records of recordsOf(db, plan)) {
      for (const record of records) {
        file.add(plan.store, record);
        if (pace.isDue) await pace.rest(file.count, all);
      }
    }
  }
  return { file: file.close(maker), madeAt: maker.madeAt, count: file.count, events: file.events };
}
