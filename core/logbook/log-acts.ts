import type { RunEvent } from "../run/event.ts";
import { mergeEvents, undoneActs } from "../run/order.ts";

/** What one tap wrote into a batch's log. */
export interface LogAct {
  readonly act: string;
  /** Wall clock, epoch ms. */
  readonly at: number;
  /** The phone it was done on. */
  readonly device: string;
  readonly events: readonly RunEvent[];
  /** Taken back later: kept in the log, no longer counted. */
  readonly undone: boolean;
}

/**
 * The whole log of a batch: every event ever stored, in the common order, what one tap did
 * together, with what was taken back marked. An act that another phone's event falls into stands in
 * two parts.
 *
 * @param events - of one run, in any order, repeats allowed
 */
export function logActsOf(events: readonly RunEvent[]): readonly LogAct[] {
  const ordered = mergeEvents(events, []);
  const undone = undoneActs(ordered);
  const acts: LogAct[] = [];
  for (const event of ordered) {
    const last = acts.at(-1);
    if (last?.act === event.act) {
      acts[acts.length - 1] = { ...last, events: [...last.events, event] };
    } else {
      const { act, at, device } = event;
      acts.push({ act, at, device, events: [event], undone: undone.has(act) });
    }
  }
  return acts;
}

/** The phones that wrote in a log, in the order they first did. */
export const phonesOf = (events: readonly RunEvent[]): readonly string[] => [
  ...new Set(mergeEvents(events, []).map((event) => event.device)),
];
