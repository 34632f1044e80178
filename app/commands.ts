import { type Result, refused } from "../core/quantity/result.ts";
import type { Command, RunRefusal } from "../core/run/command.ts";
import { stampDrafts } from "../core/run/stamp.ts";
import type { Ingredient } from "../core/spec/ingredient.ts";
import type { Spec } from "../core/spec/spec.ts";
import type { Clock } from "./clock.ts";
import {
  highestHlc,
  logOf,
  notice,
  now,
  ownIngredients,
  runOf,
  saving,
  settings,
  specs,
  takeAll,
  takeEvents,
} from "./state.ts";
import { readBooks, removeSpec, writeIngredients, writeSpecs } from "./storage/books.ts";
import type { Database } from "./storage/database.ts";
import { appendEvents, readLog, readRun } from "./storage/run-log.ts";
import { readSettings, type Settings, writeSettings } from "./storage/settings.ts";

/** What the commands work with; handed over once, when the phone's storage is open. */
export interface Desk {
  readonly db: Database;
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
  await readEverything();
  // Fetched before it is wanted; a failure shows when it is.
  decisions().catch(() => undefined);
}

/** Reads everything that is stored into the page's memory. */
export async function readEverything(): Promise<void> {
  const { db } = atDesk();
  const [log, books, chosen] = await Promise.all([readLog(db), readBooks(db), readSettings(db)]);
  const { specs, ingredients } = books;
  takeAll({
    events: log.events,
    specs,
    ingredients,
    settings: chosen,
    unread: log.unread + books.unread,
  });
}

/** Reads one run again after another window stored something in it. */
export async function readAgain(runId: string): Promise<void> {
  takeEvents(await readRun(atDesk().db, runId));
}

/** Stores something; what the page says about it is true when it says it. */
export async function store<Value>(
  write: () => Promise<Value>,
): Promise<Result<Value, "not-saved">> {
  saving.value = { type: "saving" };
  try {
    const value = await write();
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
  const { db, clock, device, newId, announce } = atDesk();
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
      last: highestHlc(),
      notBefore: log.at(-1)?.at ?? 0,
      newId,
    });
    const written = await store(() => appendEvents(db, runId, log.length, events));
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

/** Saves a spec. */
export async function saveSpec(spec: Spec): Promise<Result<void, "not-saved">> {
  const written = await store(() => writeSpecs(atDesk().db, [spec]));
  if (written.ok) specs.value = [...specs.value.filter((one) => one.id !== spec.id), spec];
  return written;
}

/** Removes a spec from the book. */
export async function dropSpec(id: string): Promise<Result<void, "not-saved">> {
  const written = await store(() => removeSpec(atDesk().db, id));
  if (written.ok) specs.value = specs.value.filter((one) => one.id !== id);
  return written;
}

/** Saves an ingredient of the house. */
export async function saveIngredient(one: Ingredient): Promise<Result<void, "not-saved">> {
  const written = await store(() => writeIngredients(atDesk().db, [one]));
  if (written.ok) {
    ownIngredients.value = [...ownIngredients.value.filter((old) => old.id !== one.id), one];
  }
  return written;
}

/** Saves what the house has chosen. */
export async function saveSettings(change: Partial<Settings>): Promise<Result<void, "not-saved">> {
  const next = { ...settings.value, ...change };
  const written = await store(() => writeSettings(atDesk().db, next));
  if (written.ok) settings.value = next;
  return written;
}

/** Puts the demo specs in, or back as they were. */
export async function putSpecs(demo: readonly Spec[]): Promise<Result<void, "not-saved">> {
  const written = await store(() => writeSpecs(atDesk().db, demo));
  if (written.ok) {
    const ids = new Set(demo.map((spec) => spec.id));
    specs.value = [...specs.value.filter((spec) => !ids.has(spec.id)), ...demo];
  }
  return written;
}

/** A fresh id for something the person makes. */
export const freshId = (): string => atDesk().newId();

/** This phone, as its events name it. */
export const thisDevice = (): string => atDesk().device;
