import { closedSpans, type Hours } from "./hours.ts";
import { FILTER_STAND, type Limits, PERSON } from "./job.ts";
import type { LocalOf } from "./ready-by.ts";

/** What a house has, and when somebody is in. */
export interface Room {
  readonly people: number;
  readonly filterStands: number;
  /** Litres. */
  readonly fridge: number;
  readonly freezer: number;
  readonly hours: Hours;
}

/**
 * The limits that a house plans within.
 *
 * @param over - the time that is planned, epoch ms
 * @param zone - whose clocks the hours are read on
 * @param localOf - what the zone's clocks show at a moment
 * @throws RangeError when the hours are no times of day
 */
export function limitsOf(
  room: Room,
  over: { readonly from: number; readonly to: number },
  zone: string,
  localOf: LocalOf,
): Limits {
  const { people, filterStands, fridge, freezer, hours } = room;
  return {
    capacity: { [PERSON]: people, [FILTER_STAND]: filterStands, fridge, freezer },
    taken: closedSpans(hours, zone, over, localOf).map((span) => ({
      ...span,
      resource: PERSON,
      amount: people,
    })),
  };
}
