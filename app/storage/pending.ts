import { eventSchema, type RunEvent } from "../../core/run/event.ts";
import type { Database } from "./database.ts";
import { inOne } from "./in-one.ts";
import { markStale } from "./records.ts";

// Written at once, before a transaction is even begun: what a person confirmed is on the phone
// although the page dies before the database has it. These words are never changed.
const KEY = "second-pour-pending";
const DAMAGED = "second-pour-pending-damaged";

/** The phone's small store; nothing where the browser refuses it. */
function shelf(): Storage | undefined {
  try {
    return globalThis.localStorage;
  } catch {
    return undefined;
  }
}

/** What lies there; nothing where a damaged store does not give it out. */
function lying(): string | null | undefined {
  try {
    return shelf()?.getItem(KEY);
  } catch {
    return undefined;
  }
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

interface Kept {
  readonly events: readonly RunEvent[];
  /** Something in it could not be read. */
  readonly damaged: boolean;
}

function readKept(text: string | null | undefined): Kept {
  if (text === null || text === undefined) return { events: [], damaged: false };
  const all = parsed(text);
  if (!Array.isArray(all)) return { events: [], damaged: true };
  const events = all.flatMap((one: unknown) => eventSchema.safeParse(one).data ?? []);
  return { events, damaged: events.length < all.length };
}

function keep(events: readonly RunEvent[]): void {
  try {
    if (events.length === 0) shelf()?.removeItem(KEY);
    else shelf()?.setItem(KEY, JSON.stringify(events));
  } catch {
    // No room beside the database: it alone must do.
  }
}

/** Keeps events that are about to be stored. */
export function keepPending(events: readonly RunEvent[]): void {
  keep([...readKept(lying()).events, ...events]);
}

/** Lets events go that are stored, or that a person was told are not. */
export function dropPending(events: readonly RunEvent[]): void {
  const gone = new Set(events.map(({ id }) => id));
  keep(readKept(lying()).events.filter(({ id }) => !gone.has(id)));
}

/**
 * Stores what was confirmed before the page last ended and had not reached the database; by id, so
 * that doing it twice is doing it once. What cannot be read is set aside, never thrown away.
 *
 * @returns how many events were stored that were not there
 * @throws DOMException when the phone could not store them: they are kept for the next start
 */
export async function replayPending(db: Database): Promise<number> {
  const text = lying();
  const { events, damaged } = readKept(text);
  if (damaged) {
    try {
      shelf()?.setItem(DAMAGED, text ?? "");
    } catch {
      // It stays where it was until something new is kept.
    }
  }
  if (events.length === 0) return 0;
  const tx = db.transaction(["events", "settings"], "readwrite", { durability: "strict" });
  const log = tx.objectStore("events");
  const added: RunEvent[] = [];
  await inOne(tx, async () => {
    for (const event of events) {
      if ((await log.getKey(event.id)) !== undefined) continue;
      await log.add(event);
      added.push(event);
    }
    if (added.length > 0) {
      await markStale(tx.objectStore("settings"), new Set(added.map(({ runId }) => runId)));
    }
  });
  dropPending(events);
  return added.length;
}
