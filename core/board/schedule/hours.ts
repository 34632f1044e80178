import { DAY } from "../../quantity/time-units-table.ts";
import { utcCalendar, utcMoment } from "../calendar/utc.ts";
import type { Span } from "./day-plan.ts";
import { type LocalOf, readyByOf } from "./ready-by.ts";

/** From when to when somebody is in, each day, as a clock on the wall shows it. */
export interface Hours {
  /** `HH:MM` */
  readonly from: string;
  /** `HH:MM`; before or at `from` it is the next day's. */
  readonly to: string;
}

const two = (value: number): string => String(value).padStart(2, "0");

/** The date that a clock on the wall shows so many days after a moment, `YYYY-MM-DD`. */
function dateOf(ms: number, days: number, zone: string, localOf: LocalOf): string {
  const shown = localOf(ms, zone);
  const { year, month, day } = utcCalendar(utcMoment({ ...shown, hour: 12 }) + days * DAY);
  return `${String(year).padStart(4, "0")}-${two(month)}-${two(day)}`;
}

function momentOf(date: string, time: string, zone: string, localOf: LocalOf): number {
  const read = readyByOf({ date, time, zone }, localOf);
  if (!read.ok) throw new RangeError(`hours must be HH:MM, got ${time}`);
  return read.value.at;
}

/** When somebody is in, day by day. */
function openSpans(hours: Hours, zone: string, over: Span, localOf: LocalOf): readonly Span[] {
  // From the day before to the day after the last: what lies past a closing needs the next opening.
  const days = Math.ceil((over.to - over.from) / DAY) + 3;
  return Array.from({ length: days }, (_, at) => {
    const overnight = hours.to <= hours.from ? 1 : 0;
    const date = (plus: number) => dateOf(over.from, at - 1 + plus, zone, localOf);
    return {
      from: momentOf(date(0), hours.from, zone, localOf),
      to: momentOf(date(overnight), hours.to, zone, localOf),
    };
  });
}

/**
 * When nobody is in: what lies between the opening hours of the days.
 *
 * @param hours - the same time twice means that somebody is always in
 * @param zone - whose clocks the hours are read on; a day of a clock change is as long as it is
 * @param over - epoch ms; only what lies in it is told
 * @param localOf - what the zone's clocks show at a moment
 * @returns spans in order, none empty
 * @throws RangeError when the hours are no times of day
 * @source readyByOf for a time that a clock change shows twice or never
 */
export function closedSpans(
  hours: Hours,
  zone: string,
  over: Span,
  localOf: LocalOf,
): readonly Span[] {
  if (hours.from === hours.to) return [];
  const open = openSpans(hours, zone, over, localOf);
  return open.flatMap((one, at) => {
    const before = open[at - 1];
    if (before === undefined) return [];
    const from = Math.max(before.to, over.from);
    const to = Math.min(one.from, over.to);
    return to > from ? [{ from, to }] : [];
  });
}

/**
 * Days as the clocks of a zone show them, from the one that a moment lies in.
 *
 * @param count - from 1
 * @returns spans in order; one with a clock change is 23 or 25 hours long
 * @source readyByOf for midnight
 */
export function localDays(
  at: number,
  count: number,
  zone: string,
  localOf: LocalOf,
): readonly Span[] {
  const midnight = (days: number): number =>
    momentOf(dateOf(at, days, zone, localOf), "00:00", zone, localOf);
  return Array.from({ length: count }, (_, day) => ({
    from: midnight(day),
    to: midnight(day + 1),
  }));
}
