import { atDesk, type Desk, layDesk, onOpen } from "./desk.ts";
import { pen } from "./pen.ts";
import {
  forgetRuns,
  isLoaded,
  records,
  recordsRead,
  takeBooks,
  takeLogs,
  takeRecords,
} from "./state.ts";
import { readBooks } from "./storage/books.ts";
import type { Database, StoredRecord } from "./storage/database.ts";
import { replayPending } from "./storage/pending.ts";
import { readRecords, type Stale, staleRecords } from "./storage/records.ts";
import { readOpenRuns, readRun } from "./storage/run-log.ts";
import { readSettings } from "./storage/settings.ts";

/** Deciding and working out records: needed at the first act, not at the first look. */
export async function decisions() {
  const [{ decide }, { stampDrafts }, { rebuildRecords, storedRecord }] = await Promise.all([
    import("../core/run/decide.ts"),
    import("../core/run/stamp.ts"),
    import("./storage/rebuild.ts"),
  ]);
  return { decide, stampDrafts, rebuildRecords, storedRecord };
}

/** Called with how many of how many batches have been worked out anew. */
export type OnPart = (done: number, all: number) => void;

/** Which records have to be worked out anew; only who writes may. */
const staleHere = async (db: Database) =>
  pen.value === "mine" ? await staleRecords(db) : undefined;

/** The books and what is being made: all that the Bench needs. */
async function readForBench(db: Database) {
  const [open, books, settings] = await Promise.all([
    readOpenRuns(db),
    readBooks(db),
    readSettings(db),
  ]);
  return { open, books: { ...books, settings } };
}

/** Works out anew the records that need it; only then do they say what is open. */
const rebuild = async (db: Database, stale: Stale, onPart?: OnPart): Promise<void> =>
  (await decisions()).rebuildRecords(db, stale, onPart);

function takeForBench({ open, books }: Awaited<ReturnType<typeof readForBench>>): void {
  takeLogs(open);
  takeBooks(books);
}

let reading: Promise<void> | undefined;

async function readRest(): Promise<void> {
  // Told once: lists and plans that follow the records are worked out once.
  const all: StoredRecord[] = [];
  for await (const part of readRecords(atDesk().db)) all.push(...part);
  takeRecords(all);
  // The window that writes knows itself what it removed.
  if (pen.value === "elsewhere") {
    const there = new Set(all.map(({ id }) => id));
    const gone = records.value.filter(({ runId }) => !there.has(runId));
    forgetRuns(new Set(gone.map(({ runId }) => runId)));
  }
  recordsRead.value = true;
}

/**
 * Waits until the record of every batch is in memory: read behind the first screen's back.
 *
 * @throws DOMException when the phone's storage does not answer
 */
export function everyRecord(): Promise<void> {
  reading ??= readRest().catch((error: unknown) => {
    reading = undefined;
    throw error;
  });
  return reading;
}

/**
 * Hands over what reading and writing work with, and reads what the first screen needs; what was
 * confirmed and not stored yet comes first. All is asked for at once: a slow phone takes as long
 * for each answer as for all.
 *
 * @param opened - what the commands work with
 * @param nameOf - reads or makes this phone's own id
 * @param onPart - told how far records are worked out, where they have to be
 * @throws DOMException when the phone's storage does not answer
 */
export async function openDesk(
  opened: Omit<Desk, "device">,
  nameOf: (db: Database) => Promise<string>,
  onPart?: OnPart,
): Promise<void> {
  const { db } = opened;
  if (pen.value === "mine") await replayPending(db);
  const [device, stale, read] = await Promise.all([nameOf(db), staleHere(db), readForBench(db)]);
  layDesk({ ...opened, device });
  if (stale === undefined) return takeForBench(read);
  await rebuild(db, stale, onPart);
  takeForBench(await readForBench(db));
}

/** Reads everything that is stored again: after an import, or after another window wrote. */
export async function readEverything(onPart?: OnPart): Promise<void> {
  const { db } = atDesk();
  const stale = await staleHere(db);
  if (stale !== undefined) await rebuild(db, stale, onPart);
  takeForBench(await readForBench(db));
  reading = readRest();
  await reading;
}

/** Reads one run again after another window stored something in it. */
export async function readAgain(runId: string): Promise<void> {
  const log = await onOpen((db) => readRun(db, runId));
  takeLogs([log]);
  const { storedRecord } = await decisions();
  const record = storedRecord(log.events, log.unread);
  if (record !== undefined) takeRecords([record]);
}

/** Brings the log of a run into memory, where it is not. */
export async function loadRun(runId: string): Promise<void> {
  if (!isLoaded(runId)) await readAgain(runId);
}
