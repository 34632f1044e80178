import { accepted, type Result, refused } from "../../quantity/result.ts";
import { DAY, MINUTE } from "../../quantity/time-units-table.ts";
import { type CalendarTime, utcCalendar, utcMoment } from "../calendar/utc.ts";

/** A moment as people say it. */
export interface LocalWords {
  /** `YYYY-MM-DD` */
  readonly date: string;
  /** `HH:MM`, 00:00 to 23:59 */
  readonly time: string;
  /** The zone's name, as the page's resolver knows it. */
  readonly zone: string;
}

/** What a clock on the wall of a zone shows at a moment. Given by the page. */
export type LocalOf = (ms: number, zone: string) => CalendarTime;

/**
 * The moment meant. `twice`: clocks went back and showed it twice. `never`: clocks went forward over
 * it; `later` is what a clock that was not put forward would show, `earlier` what one that was put
 * forward before would. `at` is the earlier one: a batch that is ready too soon is still ready.
 */
export type ReadyBy =
  | { readonly shown: "once"; readonly at: number }
  | {
      readonly shown: "twice" | "never";
      readonly at: number;
      readonly earlier: number;
      readonly later: number;
    };

/** Words that name no moment: what they should look like, or a day that no month has. */
export type ReadyByRefusal = "not-a-date" | "not-a-time";

const DATE = /^(\d{4})-(\d{2})-(\d{2})$/;
const TIME = /^([01]\d|2[0-3]):([0-5]\d)$/;

function readDate(date: string): CalendarTime | undefined {
  const [, year, month, day] = (DATE.exec(date) ?? []).map(Number);
  if (year === undefined || month === undefined || day === undefined) return undefined;
  const read = { year, month, day, hour: 0, minute: 0 };
  const back = utcCalendar(utcMoment(read));
  return month > 0 && back.month === month && back.day === day ? read : undefined;
}

/** How far the zone is ahead of Greenwich at a moment, ms. */
function aheadAt(ms: number, zone: string, localOf: LocalOf): number {
  const whole = Math.floor(ms / MINUTE) * MINUTE;
  return utcMoment(localOf(whole, zone)) - whole;
}

/**
 * The moment that local words mean.
 *
 * @param words - date, time and zone
 * @param localOf - what the zone's clocks show at a moment
 * @returns epoch ms, with both answers where clocks were changed over it
 * @source a time is what the zone's clocks show; those shown twice or never as in RFC 5545, 3.3.5,
 *   which takes the first of two, and the offset before the gap (`later` here); ours takes the
 *   earlier of both, being a promise
 * @limits zones that change twice within two days, or that are ahead by parts of a minute
 */
export function readyByOf(words: LocalWords, localOf: LocalOf): Result<ReadyBy, ReadyByRefusal> {
  const date = readDate(words.date);
  if (date === undefined) return refused("not-a-date", { date: words.date });
  const [, hour, minute] = (TIME.exec(words.time) ?? []).map(Number);
  if (hour === undefined || minute === undefined)
    return refused("not-a-time", { time: words.time });
  const shown = utcMoment({ ...date, hour, minute });
  // No zone is more than a day away from Greenwich: one is before any change, one after it.
  const aheads = [shown - DAY, shown + DAY].map((ms) => aheadAt(ms, words.zone, localOf));
  const moments = [...new Set(aheads.map((ahead) => shown - ahead))].sort((a, b) => a - b);
  const right = moments.filter((ms) => ms + aheadAt(ms, words.zone, localOf) === shown);
  if (right.length === 1) return accepted({ shown: "once", at: right[0] ?? shown });
  const [earlier = shown, later = shown] = moments;
  return accepted({ shown: right.length === 0 ? "never" : "twice", at: earlier, earlier, later });
}
