import type { RunEvent } from "./event.ts";
import { undoneActs } from "./order.ts";

/** Why an act stays as it is. */
export type TakeBackRefusal = "nothing-to-undo" | "undo-later-first";

const movesOn = ({ type }: RunEvent): boolean =>
  type === "step.finished" || type === "run.abandoned";

/**
 * The latest act that moved the work on and still stands: what "take back" means by itself.
 *
 * @param events - the run's log in the common order
 * @returns nothing where none does
 */
export function lastMove(events: readonly RunEvent[]): string | undefined {
  const undone = undoneActs(events);
  return events.findLast((event) => movesOn(event) && !undone.has(event.act))?.act;
}

/** Whether an act moved the work on, or took such an act back, or brought one back. */
function moves(events: readonly RunEvent[], act: string, seen = new Set<string>()): boolean {
  if (seen.has(act)) return false;
  seen.add(act);
  return events.some(
    (event) =>
      event.act === act &&
      (movesOn(event) || (event.type === "event.undone" && moves(events, event.undoes, seen))),
  );
}

/**
 * Whether an act can be taken back. One that moved the work on cannot while a later one stands, or
 * the later step would hang in the air; nor can taking such an act back, once the work went another
 * way. The start of a run is never taken back: abandon it instead.
 *
 * @param events - the run's log in the common order
 * @param act - the act to take back; it may itself have taken something back
 * @returns what stands against it, or nothing
 */
export function barToTakingBack(
  events: readonly RunEvent[],
  act: string,
): TakeBackRefusal | undefined {
  const undone = undoneActs(events);
  const standing = events.filter((event) => !undone.has(event.act));
  const mine = standing.filter((event) => event.act === act);
  if (mine.length === 0 || mine.some((event) => event.type === "run.started")) {
    return "nothing-to-undo";
  }
  const later = standing.slice(standing.findLastIndex((event) => event.act === act) + 1);
  const inTheWay = mine.some(movesOn)
    ? later.some(movesOn)
    : moves(events, act) && later.some((event) => moves(events, event.act));
  return inTheWay ? "undo-later-first" : undefined;
}
