import type { RunEvent } from "./event.ts";
import { compareHlc } from "./hlc.ts";

/** Sort order of ids: by code unit, so that it is the same on every phone. */
export const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** The one order in which every phone reads the same events: logical clock, then phone, then id. */
export const compareEvents = (a: RunEvent, b: RunEvent): number =>
  compareHlc(a.hlc, b.hlc) || byText(a.device, b.device) || byText(a.id, b.id);

/**
 * The union of two logs: a grow-only set of events by id, in the common order.
 * Commutative, associative, idempotent.
 *
 * @source Shapiro and others, "A comprehensive study of convergent and commutative replicated data
 *   types", INRIA 2011 (grow-only set), from memory
 */
export function mergeEvents(a: readonly RunEvent[], b: readonly RunEvent[]): readonly RunEvent[] {
  const byId = new Map<string, RunEvent>();
  for (const event of [...a, ...b]) {
    // Two events with one id are the same event; a forged twin loses by its text, the same on every phone.
    const twin = byId.get(event.id);
    if (twin === undefined || JSON.stringify(event) < JSON.stringify(twin)) {
      byId.set(event.id, event);
    }
  }
  return [...byId.values()].sort(compareEvents);
}

/**
 * The acts that have been taken back. An undo can itself be undone: read from the end, so that the
 * latest word counts. The start of a run is never taken back, or the whole batch would be gone.
 *
 * @param ordered - events in the common order
 * @returns the acts whose events no longer count
 */
export function undoneActs(ordered: readonly RunEvent[]): ReadonlySet<string> {
  const starts = new Set(ordered.flatMap(({ type, act }) => (type === "run.started" ? [act] : [])));
  const undone = new Set<string>();
  for (const event of [...ordered].reverse()) {
    if (event.type !== "event.undone" || undone.has(event.act)) continue;
    if (!starts.has(event.undoes)) undone.add(event.undoes);
  }
  return undone;
}
