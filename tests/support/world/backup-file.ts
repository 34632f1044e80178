import { createHash } from "node:crypto";
import { importBackup } from "../../../app/storage/backup/import.ts";
import { type OpenedBackup, openBackup } from "../../../app/storage/backup/open.ts";
import type { Work } from "../../../app/storage/backup/pace.ts";
import { writeBackup } from "../../../app/storage/backup/write.ts";
import { writeTo } from "../../../app/storage/books.ts";
import type { Database } from "../../../app/storage/database.ts";
import { DAIRY_WASH } from "../../../core/method/dairy-wash.ts";
import { CUPBOARD } from "../../../core/spec/cupboard-table.ts";
import { append } from "../phone/phone-storage.ts";
import { plannedBatch } from "./planned-batch.ts";
import { demoSpec, started } from "./play-run.ts";

/** When the tests' backup is made. */
export const MADE = Date.parse("2025-11-25T10:00:00Z");
export const MAKER = { madeAt: MADE, app: "0.0.0-test" };

/** Work that nobody watches. */
export const unwatched = (): Work => ({
  mono: () => performance.now(),
  signal: new AbortController().signal,
  onPart: () => undefined,
});

/** A log of one batch that has just been begun. */
export const LOG = started("run-a", "PB-2511", MADE)
  .finish()
  .then({ type: "add-note", text: "smells of crème brûlée" }).events;
export const BEACON = demoSpec("Pear Beacon");
const ownWash = { ...DAIRY_WASH, id: "own-wash", name: "Slower wash" };

/** One batch, and one record of each book. */
export async function fill(db: Database): Promise<void> {
  await append(db, "run-a", 0, LOG);
  await writeTo(db, "specs", [BEACON]);
  await writeTo(db, "ingredients", CUPBOARD.slice(0, 1));
  await writeTo(db, "procedures", [ownWash]);
  await writeTo(db, "planned", [plannedBatch("friday", MADE)]);
}

/** Records that `fill` puts on a phone. */
export const FILLED = LOG.length + 4;

/** The whole phone as a file's text. */
export const textOf = async (db: Database): Promise<string> =>
  (await writeBackup(db, MAKER, unwatched())).file.text();

/** What a file would bring; it must not be refused as a whole. */
export async function opened(db: Database, ...file: BlobPart[]): Promise<OpenedBackup> {
  const read = await openBackup(db, new Blob(file), unwatched());
  if (!read.ok) throw new RangeError(`backup refused: ${read.refusal}`);
  return read.value;
}

/** Brings a file in, as the second hold would. */
export async function bringIn(db: Database, ...file: BlobPart[]) {
  const { fresh } = await opened(db, ...file);
  return importBackup(db, fresh, unwatched());
}

const header = (lines: number, sha256: string) =>
  JSON.stringify({
    format: "second-pour-backup",
    version: 1,
    madeAt: MADE,
    app: "x",
    lines,
    sha256,
  });

/** A whole file of any lines, as the first version of the app wrote it. */
export function fileOfLines(lines: readonly string[]): string {
  const body = lines.join("\n");
  const sum = createHash("sha256").update(body).digest("hex");
  return `${header(lines.length, sum)}\n${body}\n`;
}
