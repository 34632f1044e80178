import { utcMoment } from "../core/board/calendar/utc.ts";
import type { LocalOf } from "../core/board/schedule/ready-by.ts";
import { DAY, MINUTE } from "../core/quantity/time-units-table.ts";

const formats = new Map<string, Intl.DateTimeFormat>();

function formatFor(zone: string): Intl.DateTimeFormat {
  const known = formats.get(zone);
  if (known !== undefined) return known;
  const made = new Intl.DateTimeFormat("en-GB", {
    timeZone: zone,
    hourCycle: "h23",
    year: "numeric",
    month: "numeric",
    day: "numeric",
    hour: "numeric",
    minute: "numeric",
  });
  formats.set(zone, made);
  return made;
}

/** What a clock on the wall of a zone shows at a moment. */
export const localOf: LocalOf = (ms, zone) => {
  const parts = new Map(
    formatFor(zone)
      .formatToParts(ms)
      .map(({ type, value }) => [type, value]),
  );
  const part = (type: Intl.DateTimeFormatPartTypes) => Number(parts.get(type) ?? 0);
  return {
    year: part("year"),
    month: part("month"),
    day: part("day"),
    hour: part("hour"),
    minute: part("minute"),
  };
};

/** The zone this phone is set to. */
export const phoneZone = (): string => Intl.DateTimeFormat().resolvedOptions().timeZone;

/** What the clock on the wall is ahead of UTC at a moment, ms, but for whole days. */
export function wallAhead(at: number): number {
  const { hour, minute } = localOf(at, phoneZone());
  const intoDay = Math.floor((at % DAY) / MINUTE);
  return (hour * 60 + minute - intoDay) * MINUTE;
}

const two = (value: number): string => String(value).padStart(2, "0");

/**
 * A moment as ISO 8601 writes it, by the clocks of a zone: "2025-11-25T14:30:05+01:00".
 *
 * @param zone - the phone's where none is given
 */
export function isoStamp(at: number, zone = phoneZone()): string {
  const whole = Math.floor(at / MINUTE) * MINUTE;
  const { year, month, day, hour, minute } = localOf(whole, zone);
  const ahead = Math.round((utcMoment({ year, month, day, hour, minute }) - whole) / MINUTE);
  const [off, sign] = ahead < 0 ? [-ahead, "-"] : [ahead, "+"];
  const date = `${String(year).padStart(4, "0")}-${two(month)}-${two(day)}`;
  const seconds = Math.floor((at - whole) / 1000);
  return `${date}T${two(hour)}:${two(minute)}:${two(seconds)}${sign}${two(Math.floor(off / 60))}:${two(off % 60)}`;
}
