import { DAY, MINUTE } from "../../quantity/time-units-table.ts";

/** A date and time of day by the calendar. */
export interface CalendarTime {
  readonly year: number;
  /** 1 to 12 */
  readonly month: number;
  readonly day: number;
  readonly hour: number;
  readonly minute: number;
}

/** Days of 400 years, after which the calendar repeats. */
const ERA = 146_097;
/** Days from 1 March of year 0 to 1 January 1970. */
const EPOCH = 719_468;

/**
 * Days from 1 January 1970 to a date.
 *
 * @param month - 1 to 12
 * @returns whole days; negative before. A day past the month's end counts on into the next
 * @source proleptic Gregorian calendar with years that begin in March, as in H. Hinnant,
 *   chrono-compatible low-level date algorithms, days_from_civil; from memory, checked against the
 *   engine's own calendar
 * @example
 * daysSinceEpoch(2025, 3, 30) // => 20177
 */
export function daysSinceEpoch(year: number, month: number, day: number): number {
  const march = (month + 9) % 12;
  const from = month > 2 ? year : year - 1;
  const leaps = Math.floor(from / 4) - Math.floor(from / 100) + Math.floor(from / 400);
  return 365 * from + leaps + Math.floor((153 * march + 2) / 5) + day - 1 - EPOCH;
}

/**
 * A moment given by date and time at Greenwich.
 *
 * @returns epoch ms
 * @example
 * utcMoment({ year: 2025, month: 3, day: 30, hour: 1, minute: 0 }) // => 1743296400000
 */
export const utcMoment = ({ year, month, day, hour, minute }: CalendarTime): number =>
  daysSinceEpoch(year, month, day) * DAY + (hour * 60 + minute) * MINUTE;

/**
 * The date and time at Greenwich.
 *
 * @param ms - epoch ms
 * @source the inverse of `daysSinceEpoch`, civil_from_days in the same source
 */
export function utcCalendar(ms: number): CalendarTime {
  const days = Math.floor(ms / DAY);
  const minutes = Math.floor((ms - days * DAY) / MINUTE);
  const shifted = days + EPOCH;
  const era = Math.floor(shifted / ERA);
  const ofEra = shifted - era * ERA;
  const leaps = Math.floor(ofEra / 1460) - Math.floor(ofEra / 36_524) + Math.floor(ofEra / 146_096);
  const yearOfEra = Math.floor((ofEra - leaps) / 365);
  const start = 365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100);
  const march = Math.floor((5 * (ofEra - start) + 2) / 153);
  const month = march < 10 ? march + 3 : march - 9;
  return {
    year: era * 400 + yearOfEra + (month <= 2 ? 1 : 0),
    month,
    day: ofEra - start - Math.floor((153 * march + 2) / 5) + 1,
    hour: Math.floor(minutes / 60),
    minute: minutes % 60,
  };
}
