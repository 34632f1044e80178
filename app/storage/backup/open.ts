import { type Result, refused } from "../../../core/quantity/result.ts";
import type { Database } from "../database.ts";
import { type BackupRefusal, type Header, MOST_BYTES, MOST_LINES, readHeader } from "./header.ts";
import type { Brought } from "./kinds.ts";
import { type Line, LineCutter } from "./lines.ts";
import { Pace, type Work } from "./pace.ts";
import { hereIn, type LeftLines, Sorter } from "./sort-lines.ts";

/** So much of a file is in memory at once, bytes. */
const PIECE = 256 * 1024;
/** No header of ours is nearly as long, bytes: a file without a line end up to here is none of ours. */
const MOST_HEADER = 1024 * 1024;

/** What a backup would bring, before anything is stored. */
export interface OpenedBackup {
  /** When it was made, epoch ms; 0 where the file does not say. */
  readonly madeAt: number;
  /** What is not here yet. */
  readonly fresh: Brought;
  readonly freshCount: number;
  /** Here already, with the same content. */
  readonly known: number;
  readonly left: LeftLines;
  /** Batches of which the file brings something, whose beginning is neither in it nor here. */
  readonly startless: number;
  /** Lines are missing, or were altered: how many there should be, and are. */
  readonly damage?: { readonly lines: number; readonly found: number };
}

/** The bytes of a part of a file; nothing where the phone does not let them be read. */
async function pieceAt(file: Blob, at: number): Promise<Uint8Array | undefined> {
  try {
    return new Uint8Array(await file.slice(at, at + PIECE).arrayBuffer());
  } catch {
    return undefined;
  }
}

/** A file as it is being read. */
class Reading {
  readonly #cutter = new LineCutter();
  readonly #sorter: Sorter;
  readonly #pace: Pace;
  #header: Header | undefined;

  constructor(sorter: Sorter, pace: Pace) {
    this.#sorter = sorter;
    this.#pace = pace;
  }

  /** Reads the next piece; the refusal of the whole file, where it comes to that. */
  async take(piece: Uint8Array, read: number): Promise<Refused | undefined> {
    const found = await this.#sort(this.#cutter.cut(piece));
    if (found !== undefined) return found;
    if (this.#header === undefined && read > MOST_HEADER) return refused("backup-not-ours");
    const tooMany = this.#cutter.ends > MOST_LINES + 1;
    return tooMany ? refused("backup-too-many-lines", { most: MOST_LINES }) : undefined;
  }

  /** What the whole file comes to. */
  async finish(): Promise<Result<OpenedBackup["damage"], BackupRefusal>> {
    const { last, sha256 } = this.#cutter.finish();
    const found = await this.#sort(last);
    if (found !== undefined) return found;
    const header = this.#header;
    if (header === undefined) return refused("backup-not-ours");
    await this.#sorter.compare();
    const whole = header.lines === this.#cutter.count && header.sha256 === sha256;
    const damage = { lines: header.lines, found: this.#cutter.count };
    return { ok: true, value: whole ? undefined : damage };
  }

  get madeAt(): number {
    return this.#header?.madeAt ?? 0;
  }

  async #sort(lines: readonly Line[]): Promise<Refused | undefined> {
    for (const line of lines) {
      if (this.#header === undefined) {
        const header = readHeader(line.bytes);
        if (!header.ok) return header;
        this.#header = header.value;
      } else this.#sorter.take(line);
      if (this.#sorter.isFull) await this.#sorter.compare();
      if (this.#pace.isDue) await this.#pace.rest(line.number - 1, this.#header.lines);
    }
    return undefined;
  }
}

type Refused = ReturnType<typeof refused<BackupRefusal>>;

/** Batches of which something new comes, and whose beginning is nowhere. */
async function startlessIn(db: Database, { events }: Brought): Promise<number> {
  const runs = new Set<string>();
  const begun = new Set<string>();
  for (const { runId, type } of events.values()) {
    runs.add(runId);
    if (type === "run.started") begun.add(runId);
  }
  let count = 0;
  for (const runId of runs) {
    if (!begun.has(runId) && (await db.getKey("records", runId)) === undefined) count += 1;
  }
  return count;
}

const freshIn = (fresh: Brought): number =>
  Object.values(fresh).reduce((sum, { size }) => sum + size, 0);

/**
 * Reads a backup file and says what it would bring; stores nothing.
 *
 * @returns what it would bring, with the lines that would be left out, or why the whole file is
 *   refused. A file of which lines are missing or altered says so under `damage`
 * @throws DOMException when the storage does not answer, or `AbortError` when it was given up
 * @limits 512 MB, a million lines, 4 MB a line; nothing in it is ever run, and only an entry's own
 *   fields count
 */
export async function openBackup(
  db: Database,
  file: Blob,
  work: Work,
): Promise<Result<OpenedBackup, BackupRefusal>> {
  if (file.size === 0) return refused("backup-empty");
  if (file.size > MOST_BYTES) return refused("backup-too-large", { most: MOST_BYTES });
  const sorter = new Sorter(db, await hereIn(db));
  const reading = new Reading(sorter, new Pace(work));
  for (let at = 0; at < file.size; at += PIECE) {
    const piece = await pieceAt(file, at);
    if (piece === undefined) return refused("backup-unreadable");
    const found = await reading.take(piece, at + piece.length);
    if (found !== undefined) return found;
  }
  const end = await reading.finish();
  if (!end.ok) return end;
  const { fresh, known, left } = sorter;
  const startless = await startlessIn(db, fresh);
  const damage = end.value === undefined ? {} : { damage: end.value };
  const { madeAt } = reading;
  return {
    ok: true,
    value: { madeAt, fresh, freshCount: freshIn(fresh), known, left, startless, ...damage },
  };
}
