import { type Result, refused } from "../core/quantity/result.ts";
import type { Clock } from "./clock.ts";
import { pen } from "./pen.ts";
import { saving } from "./state.ts";
import type { Database } from "./storage/database.ts";

/** What an act or a choice told the other windows of the app. */
export type Told =
  | { readonly stored: "run"; readonly runId: string }
  | { readonly stored: "books" }
  | { readonly stored: "everything" };

/** What the commands work with; handed over once, when the phone's storage is open. */
export interface Desk {
  readonly db: Database;
  /** Opens the database anew after the browser closed it. */
  readonly reopen: () => Promise<Database>;
  readonly clock: Clock;
  readonly device: string;
  readonly newId: () => string;
  /** Tells the other windows of the app that something was stored. */
  readonly announce: (told: Told) => void;
}

/** Why nothing was stored, whatever it was. */
export type StoreRefusal = "not-saved" | "no-room" | "pen-elsewhere" | "newer-storage";

let desk: Desk | undefined;

/** What the commands work with. @throws RangeError before storage is open */
export const atDesk = (): Desk => {
  if (desk === undefined) throw new RangeError("commands must wait until storage is open");
  return desk;
};

let sayLaid: () => void = () => undefined;

/** Kept once the commands have what they work with. */
export const deskLaid = new Promise<void>((resolve) => {
  sayLaid = resolve;
});

/** Hands the commands what they work with. */
export function layDesk(laid: Desk): void {
  desk = laid;
  sayLaid();
}

/** What an error says. */
export const why = (error: unknown): string =>
  error instanceof Error ? error.message : String(error);

/** Why this window may not write at all, where it may not. */
export function barred(): StoreRefusal | undefined {
  if (pen.value === "newer") return "newer-storage";
  return pen.value === "mine" ? undefined : "pen-elsewhere";
}

/** A connection that the browser closed is opened anew and the work tried once more. */
export async function onOpen<Value>(work: (db: Database) => Promise<Value>): Promise<Value> {
  try {
    return await work(atDesk().db);
  } catch (error) {
    if (!(error instanceof DOMException) || error.name !== "InvalidStateError") throw error;
    const before = atDesk();
    desk = { ...before, db: await before.reopen() };
    return work(desk.db);
  }
}

const isFull = (error: unknown): boolean =>
  error instanceof DOMException && error.name === "QuotaExceededError";

/** Stores something; what the page says about it is true when it says it. */
export async function store<Value>(
  write: (db: Database) => Promise<Value>,
): Promise<Result<Value, StoreRefusal>> {
  const bar = barred();
  if (bar !== undefined) return refused(bar);
  saving.value = { type: "saving" };
  try {
    const value = await onOpen(write);
    saving.value = { type: "saved" };
    return { ok: true, value };
  } catch (error) {
    if (isFull(error)) {
      saving.value = { type: "no-room" };
      return refused("no-room");
    }
    saving.value = { type: "not-saved", why: why(error) };
    return refused("not-saved", { why: why(error) });
  }
}

/** A fresh id for something the person makes. */
export const freshId = (): string => atDesk().newId();

/** This phone, as its events name it. */
export const thisDevice = (): string => atDesk().device;
