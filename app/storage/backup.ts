import { type Result, refused } from "../../core/quantity/result.ts";
import { eventSchema, type RunEvent } from "../../core/run/event.ts";
import { type Book, type Books, CHECKS } from "./books.ts";
import type { Database } from "./database.ts";

// One line of JSON each: a header, then one record a line. The header's sum is over the other lines.
const FORMAT = "second-pour-backup";
const VERSION = 1;

/** Why a file was refused as a whole. */
export type BackupRefusal = "backup-not-ours" | "backup-newer" | "backup-damaged";

/** What a backup file holds, and the lines that were not understood. */
export interface Backup extends Books {
  readonly events: readonly RunEvent[];
  /** Line numbers, as an editor counts them. */
  readonly unreadLines: readonly number[];
}

/** What one line is called by the book its record belongs to: never changed, files outlive us. */
const LINE_OF: Readonly<Record<Book, string>> = {
  specs: "spec",
  ingredients: "ingredient",
  procedures: "procedure",
  planned: "planned",
};
const BOOKS = ["specs", "ingredients", "procedures", "planned"] as const;

async function sumOf(text: string): Promise<string> {
  const bytes = await crypto.subtle.digest("SHA-256", new TextEncoder().encode(text));
  return [...new Uint8Array(bytes)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** What is to stand in a file, before any of it is checked. */
export type Records = Readonly<Record<"events" | Book, readonly unknown[]>>;

/** Records as the text of one file. */
export async function fileOf(records: Records, madeAt: number, app: string): Promise<string> {
  const lines = [
    ...records.events.map((event) => JSON.stringify({ event })),
    ...BOOKS.flatMap((name) =>
      records[name].map((record) => JSON.stringify({ [LINE_OF[name]]: record })),
    ),
  ];
  const body = lines.join("\n");
  const sha256 = await sumOf(body);
  const header = { format: FORMAT, version: VERSION, madeAt, app, lines: lines.length, sha256 };
  return `${JSON.stringify(header)}\n${body}\n`;
}

/**
 * Everything the phone keeps, as the text of one file: also what this version does not understand,
 * so that a newer one can read it back.
 */
export async function writeBackup(db: Database, madeAt: number, app: string): Promise<string> {
  const [events, specs, ingredients, procedures, planned] = await Promise.all([
    db.getAll("events"),
    db.getAll("specs"),
    db.getAll("ingredients"),
    db.getAll("procedures"),
    db.getAll("planned"),
  ]);
  return fileOf({ events, specs, ingredients, procedures, planned }, madeAt, app);
}

function parsed(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    return undefined;
  }
}

function field(value: unknown, key: string): unknown {
  if (typeof value !== "object" || value === null) return undefined;
  return Object.getOwnPropertyDescriptor(value, key)?.value;
}

type Sorted = { events: RunEvent[] } & { [Name in Book]: Books[Name][number][] };

function takeInto<Name extends Book>(name: Name, record: unknown, into: Sorted): boolean {
  const check: (entry: unknown) => { data?: Books[Name][number] | undefined } = CHECKS[name];
  const { data } = check(field(record, LINE_OF[name]));
  const list: Books[Name][number][] = into[name];
  return data !== undefined && list.push(data) > 0;
}

/** Files one line where it belongs; false where it is not understood. */
function takeLine(line: string, into: Sorted): boolean {
  const record = parsed(line);
  const event = eventSchema.safeParse(field(record, "event"));
  if (event.success) return into.events.push(event.data) > 0;
  return BOOKS.some((name) => takeInto(name, record, into));
}

/**
 * Reads the text of a backup file without storing anything.
 *
 * @returns what it holds, or why it is refused as a whole; single bad lines are counted, not fatal
 */
export async function readBackup(text: string): Promise<Result<Backup, BackupRefusal>> {
  const [first = "", ...rest] = text.replace(/^\uFEFF/u, "").split(/\r?\n/u);
  const header = parsed(first);
  if (field(header, "format") !== FORMAT) return refused("backup-not-ours");
  const version = field(header, "version");
  if (typeof version !== "number" || version < 1) return refused("backup-not-ours");
  if (version > VERSION) return refused("backup-newer", { version });
  while (rest.at(-1) === "") rest.pop();
  const lines = Number(field(header, "lines"));
  if (lines !== rest.length) return refused("backup-damaged", { lines, found: rest.length });
  if ((await sumOf(rest.join("\n"))) !== field(header, "sha256")) {
    return refused("backup-damaged", { lines, found: rest.length });
  }
  const into: Sorted = { events: [], specs: [], ingredients: [], procedures: [], planned: [] };
  const unreadLines: number[] = [];
  rest.forEach((line, index) => {
    if (!takeLine(line, into)) unreadLines.push(index + 2);
  });
  return { ok: true, value: { ...into, unreadLines } };
}

/** The stores, with what a backup brings to each. */
const shelvesOf = (backup: Backup) =>
  (["events", ...BOOKS] as const).map((name) => [name, backup[name]] as const);

/** What adding a backup would do, in records. */
export interface BackupNews {
  readonly fresh: number;
  /** Already here, and left as they are. */
  readonly known: number;
}

/** Counts what a backup would bring, without storing anything. */
export async function compareBackup(db: Database, backup: Backup): Promise<BackupNews> {
  let fresh = 0;
  let all = 0;
  for (const [name, records] of shelvesOf(backup)) {
    const here = new Set(await db.getAllKeys(name));
    const brought = new Set(records.map(({ id }) => id));
    all += brought.size;
    fresh += [...brought].filter((id) => !here.has(id)).length;
  }
  return { fresh, known: all - fresh };
}

/**
 * Adds what a backup holds to what is stored, in one transaction: events by id, specs and
 * ingredients only where none of that id is here.
 *
 * @returns how many records were new
 * @throws DOMException when the phone could not store them: nothing was added
 */
export async function importBackup(db: Database, backup: Backup): Promise<number> {
  const tx = db.transaction(["events", ...BOOKS], "readwrite", { durability: "strict" });
  let added = 0;
  const adding = shelvesOf(backup).map(async ([name, records]) => {
    const shelf = tx.objectStore(name);
    const here = new Set(await shelf.getAllKeys());
    const fresh = new Map(
      records.filter(({ id }) => !here.has(id)).map((record) => [record.id, record]),
    );
    added += fresh.size;
    await Promise.all([...fresh.values()].map((record) => shelf.add(record)));
  });
  await Promise.all([...adding, tx.done]);
  return added;
}
