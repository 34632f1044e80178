import { type Desk, deskLaid, layDesk, onOpen } from "./desk.ts";
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
const staleHere = async (db: Database, writes: boolean) =>
  writes ? await staleRecords(db) : undefined;

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
  const all = await onOpen(async (db) => {
    const some: StoredRecord[] = [];
    for await (const part of readRecords(db)) some.push(...part);
    return some;
  });
  takeRecords(all);
  // The window that writes knows itself what it removed.
  if (pen.value !== "mine") {
    const there = new Set(all.map(({ id }) => id));
    const gone = records.value.filter(({ runId }) => !there.has(runId));
    forgetRuns(new Set(gone.map(({ runId }) => runId)));
  }
  recordsRead.value = true;
}

/** What could not be read is asked for again by whoever wants it next. */
function beginReading(): Promise<void> {
  const begun = readRest().catch((error: unknown) => {
    if (reading === begun) reading = undefined;
    throw error;
  });
  reading = begun;
  return begun;
}

/**
 * Waits until the record of every batch is in memory: read behind the first screen's back.
 *
 * @throws DOMException when the phone's storage does not answer
 */
export const everyRecord = (): Promise<void> => reading ?? beginReading();

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
  const [device, stale, read] = await Promise.all([
    nameOf(db),
    staleHere(db, pen.value === "mine"),
    readForBench(db),
  ]);
  layDesk({ ...opened, device });
  if (stale === undefined) return takeForBench(read);
  await rebuild(db, stale, onPart);
  takeForBench(await readForBench(db));
}

/** Reads everything that is stored again: after an import, or after another window wrote. */
export async function readEverything(
  onPart?: OnPart,
  writes = pen.value === "mine",
): Promise<void> {
  await onOpen(async (db) => {
    const stale = await staleHere(db, writes);
    if (stale !== undefined) await rebuild(db, stale, onPart);
    takeForBench(await readForBench(db));
  });
  await beginReading();
}

/**
 * What a window does before it writes in another's place: what that one had confirmed when it ended,
 * and records that it left to be worked out, are put right as at a start.
 *
 * @throws DOMException when the phone's storage does not answer
 */
export async function takeOver(): Promise<void> {
  await deskLaid;
  await onOpen(replayPending);
  await readEverything(undefined, true);
}

/** Reads one run again after another window stored something in it. */
export async function readAgain(runId: string): Promise<void> {
  const log = await onOpen((db) => readRun(db, runId));
  // A practice that was removed elsewhere: what is in memory here is of nothing any more.
  if (isLoaded(runId) && log.events.length + log.unread === 0) forgetRuns(new Set([runId]));
  takeLogs([log]);
  const { storedRecord } = await decisions();
  const record = storedRecord(log.events, log.unread);
  if (record !== undefined) takeRecords([record]);
}

/** Brings the log of a run into memory, where it is not. */
export async function loadRun(runId: string): Promise<void> {
  if (!isLoaded(runId)) await readAgain(runId);
}
