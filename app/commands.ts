import type { Signal } from "@preact/signals";
import type { Planned } from "../core/board/planned.ts";
import type { Procedure } from "../core/method/procedure.ts";
import { type Result, refused } from "../core/quantity/result.ts";
import type { Command, RunRefusal } from "../core/run/command.ts";
import type { RunEvent } from "../core/run/event.ts";
import { HLC_ZERO } from "../core/run/hlc.ts";
import type { Ingredient } from "../core/spec/ingredient.ts";
import type { Spec } from "../core/spec/spec.ts";
import { atDesk, barred, freshId, type StoreRefusal, store, why } from "./desk.ts";
import { decisions, loadRun, readAgain } from "./reading.ts";
import {
  logOf,
  notice,
  now,
  ownIngredients,
  ownProcedures,
  planned,
  runOf,
  settings,
  somethingSaved,
  specs,
  takeEvents,
  takeRecords,
  unreadIn,
} from "./state.ts";
import { type Book, type Books, removeFrom, writeTo } from "./storage/books.ts";
import { dropPending, keepPending } from "./storage/pending.ts";
import { appendEvents } from "./storage/run-log.ts";
import { type Settings, writeSettings } from "./storage/settings.ts";
import { say } from "./words/say.ts";

/** Why nothing was stored. */
export type CommandRefusal = RunRefusal | StoreRefusal | "part-missing";

/** How long an act can be taken back from the foot of the screen, ms. */
const UNDO_FOR = 8000;
/** Another window may store something between reading and writing; deciding again settles it. */
const MOST_TRIES = 4;

/** Says something at the foot of the screen, for long enough to take it back. */
export function tell(text: string, undo?: { runId: string; act: string }): void {
  const until = atDesk().clock.now() + UNDO_FOR;
  notice.value = undo === undefined ? { text, until } : { text, until, undo };
}

/** What a try to carry out an order came to; nothing where the log had moved on meanwhile. */
type Tried = Result<string, CommandRefusal> | undefined;

async function tryOnce(
  runId: string,
  command: Command,
  act: string,
  part: Awaited<ReturnType<typeof decisions>>,
): Promise<Tried> {
  const { clock, device, newId, announce } = atDesk();
  const log = logOf(runId);
  const decision = part.decide(log, runOf(runId), command, clock.now());
  if (!decision.ok) return decision;
  const events: readonly RunEvent[] = part.stampDrafts(decision.value, {
    runId,
    device,
    act,
    now: clock.now(),
    // Its own log alone: a clock that is far ahead in one batch must not drag the others along.
    last: log.at(-1)?.hlc ?? HLC_ZERO,
    notBefore: log.at(-1)?.at ?? 0,
    newId,
  });
  const beyond = unreadIn(runId);
  const record = part.storedRecord([...log, ...events], beyond);
  if (record === undefined) return refused("not-saved", { why: say.places.noBeginning });
  keepPending(events);
  const expected = log.length + beyond;
  const written = await store((db) => appendEvents(db, { expected, events, record }));
  // Stored, or the person was told that it is not.
  dropPending(events);
  if (!written.ok) return written;
  if (!written.value.ok) return undefined;
  takeEvents(events);
  takeRecords([record]);
  now.value = clock.now();
  announce({ stored: "run", runId });
  return { ok: true, value: act };
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
  const bar = barred();
  if (bar !== undefined) return refused(bar);
  const part = await decisions().catch(() => undefined);
  if (part === undefined) return refused("part-missing");
  try {
    return await tryAll(runId, command, part);
  } catch (error) {
    // What could not be read cannot be decided on.
    return refused("not-saved", { why: why(error) });
  }
}

async function tryAll(
  runId: string,
  command: Command,
  part: Awaited<ReturnType<typeof decisions>>,
): Promise<Result<string, CommandRefusal>> {
  await loadRun(runId);
  for (let tries = 0; tries < MOST_TRIES; tries += 1) {
    const act = freshId();
    const tried = await tryOnce(runId, command, act, part);
    if (tried !== undefined) {
      if (tried.ok) somethingSaved.value = true;
      return tried;
    }
    await readAgain(runId);
    // A window that took over meanwhile found it confirmed, and has stored it in this one's place.
    if (logOf(runId).some((event) => event.act === act)) return { ok: true, value: act };
  }
  return refused("not-saved", { why: say.places.keepsWriting });
}

/** What the page holds of each book. */
const SHOWN: { readonly [Name in Book]: Signal<Books[Name]> } = {
  specs,
  ingredients: ownIngredients,
  procedures: ownProcedures,
  planned,
};

const announceBooks = (): void => atDesk().announce({ stored: "books" });

/** Saves records of a book, in place of those of the same id. */
async function save<Name extends Book>(
  name: Name,
  records: Books[Name],
): Promise<Result<void, StoreRefusal>> {
  const written = await store((db) => writeTo(db, name, records));
  if (written.ok) {
    const shown: Signal<readonly { readonly id: string }[]> = SHOWN[name];
    const ids = new Set(records.map(({ id }) => id));
    shown.value = [...shown.value.filter(({ id }) => !ids.has(id)), ...records];
    announceBooks();
    somethingSaved.value = true;
  }
  return written;
}

async function drop(name: Book, id: string): Promise<Result<void, StoreRefusal>> {
  const written = await store((db) => removeFrom(db, name, id));
  if (written.ok) {
    const shown: Signal<readonly { readonly id: string }[]> = SHOWN[name];
    shown.value = shown.value.filter((one) => one.id !== id);
    announceBooks();
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

async function saveOnTop(change: Partial<Settings>): Promise<Result<void, StoreRefusal>> {
  const next = { ...settings.value, ...change };
  const written = await store((db) => writeSettings(db, next));
  if (written.ok) {
    settings.value = next;
    announceBooks();
  }
  return written;
}

let lastChoice: Promise<unknown> = Promise.resolve();

/**
 * Saves what the house has chosen, one choice after the other: each is stored with all that was
 * chosen before it.
 */
export function saveSettings(change: Partial<Settings>): Promise<Result<void, StoreRefusal>> {
  const saved = lastChoice.then(() => saveOnTop(change));
  lastChoice = saved.catch(() => undefined);
  return saved;
}
