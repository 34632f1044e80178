import type { CalendarTime } from "../../../../core/board/calendar/utc.ts";

const FIELDS = ["year", "month", "day", "hour", "minute"] as const;

/** What a clock on the wall shows, as a page would ask the engine for it (IANA time zones). */
export function wallClock(ms: number, timeZone: string): CalendarTime {
  const parts = new Intl.DateTimeFormat("en-GB", {
    timeZone,
    year: "numeric",
    month: "2-digit",
    day: "2-digit",
    hour: "2-digit",
    minute: "2-digit",
    hourCycle: "h23",
  }).formatToParts(ms);
  const [year = 0, month = 0, day = 0, hour = 0, minute = 0] = FIELDS.map((field) =>
    Number(parts.find(({ type }) => type === field)?.value),
  );
  return { year, month, day, hour, minute };
}
