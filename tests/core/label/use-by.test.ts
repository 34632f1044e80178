import fc from "fast-check";
import { afterEach, expect, test } from "vitest";
import { LONGEST_CHILLED_DAYS, useByOf } from "../../../core/label/use-by.ts";

const own = process.env.TZ;
afterEach(() => {
  if (own === undefined) delete process.env.TZ;
  else process.env.TZ = own;
});

// Worked by hand from the offsets in the IANA time zone database: London leaves summer time on
// 2025-10-26, New York enters it on 2026-03-08, Lord Howe moves by half an hour on 2026-04-05.
// Day of preparation is day 1, 7 days at most: model food code 3-501.17 (Minnesota 4626.0400).
test.each([
  ["UTC", "2025-11-25T10:00:00Z", 7, "2025-12-01T23:59:59.999Z", "an ordinary week"],
  ["UTC", "2025-11-25T00:00:00Z", 1, "2025-11-25T23:59:59.999Z", "from the first moment of a day"],
  ["UTC", "2025-11-25T23:59:59.999Z", 1, "2025-11-25T23:59:59.999Z", "from its last moment"],
  ["UTC", "2024-02-26T12:00:00Z", 4, "2024-02-29T23:59:59.999Z", "into a leap day"],
  ["Europe/London", "2025-10-22T17:00:00Z", 7, "2025-10-28T23:59:59.999Z", "over the long day"],
  ["Europe/London", "2025-10-25T22:59:00Z", 1, "2025-10-25T22:59:59.999Z", "still in summer time"],
  ["Europe/London", "2025-10-25T23:30:00Z", 1, "2025-10-26T23:59:59.999Z", "on the long day"],
  ["America/New_York", "2026-03-05T20:00:00Z", 7, "2026-03-12T03:59:59.999Z", "over the short day"],
  [
    "America/New_York",
    "2026-03-08T04:30:00Z",
    2,
    "2026-03-09T03:59:59.999Z",
    "late the day before",
  ],
  ["Australia/Lord_Howe", "2026-04-03T13:30:00Z", 3, "2026-04-06T13:29:59.999Z", "by half an hour"],
  ["Pacific/Kiritimati", "2025-12-31T11:00:00Z", 2, "2026-01-02T09:59:59.999Z", "at UTC+14"],
])("%s, made %s, kept %i days: until %s (%s)", (zone, made, days, until) => {
  process.env.TZ = zone;
  expect(new Date(useByOf(Date.parse(made), days)).toISOString()).toBe(until);
});

test("the chilled rule is seven days", () => {
  expect(LONGEST_CHILLED_DAYS).toBe(7);
});

const ZONES = ["UTC", "Europe/London", "America/New_York", "Asia/Kathmandu", "Australia/Lord_Howe"];
const moments = fc.integer({ min: Date.UTC(2020, 0), max: Date.UTC(2040, 0) });

test("one more day is one calendar day, 23 to 25 hours, and never before the making", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...ZONES),
      moments,
      fc.integer({ min: 1, max: 90 }),
      (zone, made, n) => {
        process.env.TZ = zone;
        const until = useByOf(made, n);
        const hours = (useByOf(made, n + 1) - until) / 3_600_000;
        expect(hours).toBeGreaterThanOrEqual(23);
        expect(hours).toBeLessThanOrEqual(25);
        expect(until).toBeGreaterThanOrEqual(made);
      },
    ),
  );
});

test("any moment of one day gives the same use-by", () => {
  process.env.TZ = "UTC";
  const morning = Date.parse("2025-11-25T00:00:00Z");
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 86_399_999 }), (later) => {
      expect(useByOf(morning + later, 7)).toBe(useByOf(morning, 7));
    }),
  );
});

test.each([0, -1, 2.5, Number.NaN])("refuses to keep for %d days", (days) => {
  expect(() => useByOf(0, days)).toThrow(RangeError);
});
