import type { Signal } from "@preact/signals";
import type { Planned } from "../core/board/planned.ts";
import type { Procedure } from "../core/method/procedure.ts";
import { type Result, refused } from "../core/quantity/result.ts";
import type { Command, RunRefusal } from "../core/run/command.ts";
import { HLC_ZERO } from "../core/run/hlc.ts";
import { stampDrafts } from "../core/run/stamp.ts";
import type { Ingredient } from "../core/spec/ingredient.ts";
import type { Spec } from "../core/spec/spec.ts";
import type { Clock } from "./clock.ts";
import {
  logOf,
  notice,
  now,
  ownIngredients,
  ownProcedures,
  planned,
  runOf,
  saving,
  settings,
  specs,
  takeAll,
  takeEvents,
} from "./state.ts";
import { type Book, type Books, readBooks, removeFrom, writeTo } from "./storage/books.ts";
import type { Database } from "./storage/database.ts";
import { dropPending, keepPending, replayPending } from "./storage/pending.ts";
import { appendEvents, readLog, readRun } from "./storage/run-log.ts";
import { readSettings, type Settings, writeSettings } from "./storage/settings.ts";

/** What the commands work with; handed over once, when the phone's storage is open. */
export interface Desk {
  readonly db: Database;
  /** Opens the database anew after the browser closed it. */
  readonly reopen: () => Promise<Database>;
  readonly clock: Clock;
  readonly device: string;
  readonly newId: () => string;
  /** Tells the other windows of the app that something was stored. */
  readonly announce: (runId: string) => void;
}

/** Why nothing was stored. */
export type CommandRefusal = RunRefusal | "not-saved" | "part-missing";

/** How long an act can be taken back from the foot of the screen, ms. */
const UNDO_FOR = 8000;
/** Another window may store something between reading and writing; deciding again settles it. */
const MOST_TRIES = 4;

/** Reading what happened is needed at once; deciding what may happen, only at the first tap. */
const decisions = () => import("../core/run/decide.ts");

let desk: Desk | undefined;

/** What the commands work with. @throws RangeError before storage is open */
export const atDesk = (): Desk => {
  if (desk === undefined) throw new RangeError("commands must wait until storage is open");
  return desk;
};

/** What an error says. */
export const why = (error: unknown): string =>
  error instanceof Error ? error.message : String(error);

/** Hands the commands what they work with, and reads everything that is stored. */
export async function openDesk(opened: Desk): Promise<void> {
  desk = opened;
  await replayPending(opened.db);
  await readEverything();
  // Fetched before it is wanted; a failure shows when it is.
  decisions().catch(() => undefined);
}

/** Reads everything that is stored into the page's memory. */
export async function readEverything(): Promise<void> {
  const { db } = atDesk();
  const [log, books, chosen] = await Promise.all([readLog(db), readBooks(db), readSettings(db)]);
  const unread = log.unread + books.unread;
  takeAll({ ...books, events: log.events, settings: chosen, unread });
}

/** Reads one run again after another window stored something in it. */
export async function readAgain(runId: string): Promise<void> {
  takeEvents(await readRun(atDesk().db, runId));
}

/** A connection that the browser closed is opened anew and the write tried once more. */
async function writeOnOpen<Value>(write: (db: Database) => Promise<Value>): Promise<Value> {
  try {
    return await write(atDesk().db);
  } catch (error) {
    if (!(error instanceof DOMException) || error.name !== "InvalidStateError") throw error;
    const before = atDesk();
    desk = { ...before, db: await before.reopen() };
    return write(desk.db);
  }
}

/** Stores something; what the page says about it is true when it says it. */
export async function store<Value>(
  write: (db: Database) => Promise<Value>,
): Promise<Result<Value, "not-saved">> {
  saving.value = { type: "saving" };
  try {
    const value = await writeOnOpen(write);
    saving.value = { type: "saved" };
    return { ok: true, value };
  } catch (error) {
    saving.value = { type: "not-saved", why: why(error) };
    return refused("not-saved", { why: why(error) });
  }
}

/** Says something at the foot of the screen, for long enough to take it back. */
export function tell(text: string, undo?: { runId: string; act: string }): void {
  const until = atDesk().clock.now() + UNDO_FOR;
  notice.value = undo === undefined ? { text, until } : { text, until, undo };
}

/**
 * Carries out an order about a run: decides, stores, and only then shows it.
 *
 * @returns the act that was stored, or why nothing was
 */
export async function perform(
  runId: string,
  command: Command,
): Promise<Result<string, CommandRefusal>> {
  const { clock, device, newId, announce } = atDesk();
  const part = await decisions().catch(() => undefined);
  if (part === undefined) return refused("part-missing");
  for (let tries = 0; tries < MOST_TRIES; tries += 1) {
    const log = logOf(runId);
    const decision = part.decide(log, runOf(runId), command, clock.now());
    if (!decision.ok) return decision;
    const act = newId();
    const events = stampDrafts(decision.value, {
      runId,
      device,
      act,
      now: clock.now(),
      // Its own log alone: a clock that is far ahead in one batch must not drag the others along.
      last: log.at(-1)?.hlc ?? HLC_ZERO,
      notBefore: log.at(-1)?.at ?? 0,
      newId,
    });
    keepPending(events);
    const written = await store((open) => appendEvents(open, runId, log.length, events));
    // Stored, or the person was told that it is not.
    dropPending(events);
    if (!written.ok) return written;
    if (written.value.ok) {
      takeEvents(events);
      now.value = clock.now();
      announce(runId);
      return { ok: true, value: act };
    }
    await readAgain(runId);
  }
  return refused("not-saved", { why: "another window keeps writing to this batch" });
}

/** What the page holds of each book. */
const SHOWN: { readonly [Name in Book]: Signal<Books[Name]> } = {
  specs,
  ingredients: ownIngredients,
  procedures: ownProcedures,
  planned,
};

/** Saves records of a book, in place of those of the same id. */
async function save<Name extends Book>(
  name: Name,
  records: Books[Name],
): Promise<Result<void, "not-saved">> {
  const written = await store((db) => writeTo(db, name, records));
  if (written.ok) {
    const shown: Signal<readonly { readonly id: string }[]> = SHOWN[name];
    const ids = new Set(records.map(({ id }) => id));
    shown.value = [...shown.value.filter(({ id }) => !ids.has(id)), ...records];
  }
  return written;
}

async function drop(name: Book, id: string): Promise<Result<void, "not-saved">> {
  const written = await store((db) => removeFrom(db, name, id));
  if (written.ok) {
    const shown: Signal<readonly { readonly id: string }[]> = SHOWN[name];
    shown.value = shown.value.filter((one) => one.id !== id);
  }
  return written;
}

/** Saves specs: one that was written, or the demo's as they were. */
export const saveSpecs = (some: readonly Spec[]) => save("specs", some);
/** Removes a spec from the book. */
export const dropSpec = (id: string) => drop("specs", id);
/** Saves an ingredient of the house. */
export const saveIngredient = (one: Ingredient) => save("ingredients", [one]);
/** Removes an ingredient of the house; a generic one it took the place of is back. */
export const dropIngredient = (id: string) => drop("ingredients", id);
/** Saves a procedure of the house. */
export const saveProcedure = (one: Procedure) => save("procedures", [one]);
/** Removes a procedure of the house. */
export const dropProcedure = (id: string) => drop("procedures", id);
/** Saves planned batches. */
export const savePlanned = (some: readonly Planned[]) => save("planned", some);
/** Takes a planned batch off the list. */
export const dropPlanned = (id: string) => drop("planned", id);

/** Saves what the house has chosen. */
export async function saveSettings(change: Partial<Settings>): Promise<Result<void, "not-saved">> {
  const next = { ...settings.value, ...change };
  const written = await store((db) => writeSettings(db, next));
  if (written.ok) settings.value = next;
  return written;
}

/** A fresh id for something the person makes. */
export const freshId = (): string => atDesk().newId();

/** This phone, as its events name it. */
export const thisDevice = (): string => atDesk().device;
