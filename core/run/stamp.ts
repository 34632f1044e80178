import type { Draft, RunEvent } from "./event.ts";
import { type Hlc, nextHlc } from "./hlc.ts";

/** Who and when: everything a draft lacks to become an event. */
export interface StampWith {
  readonly runId: string;
  readonly device: string;
  readonly act: string;
  /** Wall clock, whole epoch ms. */
  readonly now: number;
  /** The highest stamp this phone has seen. */
  readonly last: Hlc;
  /** The moment of the run's latest event: time in a log runs back only with the phone's clock. */
  readonly notBefore: number;
  /** A fresh id each time it is called. */
  readonly newId: () => string;
}

/**
 * The moment an act is put down to. A clock that was put back, as the log itself will say, takes the
 * log back with it: otherwise every wait begun from now on would be late by as much.
 */
function momentOf(drafts: readonly Draft[], { now, notBefore }: StampWith): number {
  const back = drafts.some((draft) => draft.type === "clock.shifted" && draft.byMs < 0);
  return Math.max(0, back ? now : Math.max(now, notBefore));
}

/**
 * Turns drafts into events, in order, each with an id and a stamp above everything seen.
 *
 * @param drafts - of one act
 * @param by - who, when, and what was seen before
 * @returns the events; the last one carries the highest stamp
 * @throws RangeError when the clock gives no whole number of ms
 */
export function stampDrafts(drafts: readonly Draft[], by: StampWith): readonly RunEvent[] {
  if (!Number.isSafeInteger(by.now)) {
    throw new RangeError(`a clock must give whole milliseconds, got ${by.now}`);
  }
  let hlc = by.last;
  const at = momentOf(drafts, by);
  return drafts.map((draft) => {
    hlc = nextHlc(hlc, by.now);
    const { runId, device, act } = by;
    return { id: by.newId(), runId, device, act, at, hlc, v: 1 as const, ...draft };
  });
}
