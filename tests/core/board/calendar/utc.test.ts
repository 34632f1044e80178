import fc from "fast-check";
import { expect, test } from "vitest";
import { daysSinceEpoch, utcCalendar, utcMoment } from "../../../../core/board/calendar/utc.ts";

// ISO 8601 / RFC 3339 dates; leap years by the Gregorian rule (1900 and 2100 have no 29 February).
test.each([
  [1970, 1, 1, 0],
  [1969, 12, 31, -1],
  [2000, 2, 29, 11_016],
  [2000, 3, 1, 11_017],
  [2100, 2, 28, 47_540],
  [2100, 3, 1, 47_541],
  [1900, 3, 1, -25_508],
])("%i-%i-%i is day %i", (year, month, day, days) => {
  expect(daysSinceEpoch(year, month, day)).toBe(days);
  expect(utcCalendar(days * 86_400_000)).toEqual({ year, month, day, hour: 0, minute: 0 });
});

const MOST = Date.UTC(9999, 11, 31, 23, 59, 59);

test("reads every moment as the engine's own calendar does", () => {
  fc.assert(
    fc.property(fc.integer({ min: Date.UTC(1600, 0, 1), max: MOST }), (ms) => {
      const date = new Date(ms);
      expect(utcCalendar(ms)).toEqual({
        year: date.getUTCFullYear(),
        month: date.getUTCMonth() + 1,
        day: date.getUTCDate(),
        hour: date.getUTCHours(),
        minute: date.getUTCMinutes(),
      });
    }),
    { numRuns: 2000 },
  );
});

test("and back again, to the minute", () => {
  fc.assert(
    fc.property(fc.integer({ min: -1e12, max: MOST }), (ms) => {
      expect(utcMoment(utcCalendar(ms))).toBe(Math.floor(ms / 60_000) * 60_000);
    }),
  );
});

test("a day past the month's end counts on", () => {
  expect(daysSinceEpoch(2025, 2, 30)).toBe(daysSinceEpoch(2025, 3, 2));
});
