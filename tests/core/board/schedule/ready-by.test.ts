import fc from "fast-check";
import { expect, test } from "vitest";
import type { Job } from "../../../../core/board/schedule/job.ts";
import { scheduleJobs } from "../../../../core/board/schedule/plan-day.ts";
import { type ReadyBy, readyByOf } from "../../../../core/board/schedule/ready-by.ts";
import { wallClock } from "../calendar/wall-clock.ts";
import { hands, job, limits, wait } from "./small-days.ts";

const utc = (words: string): number => Date.parse(`${words}Z`);

function meant(date: string, time: string, zone: string): ReadyBy {
  const read = readyByOf({ date, time, zone }, wallClock);
  if (!read.ok) throw new RangeError(read.refusal);
  return read.value;
}

// IANA time zone database, as the engine carries it.
test.each([
  ["2025-11-24", "18:00", "Europe/London", "2025-11-24T18:00"],
  ["2025-06-24", "18:00", "Europe/London", "2025-06-24T17:00"],
  ["2025-10-26", "00:59", "Europe/London", "2025-10-25T23:59"],
  ["2025-10-26", "02:00", "Europe/London", "2025-10-26T02:00"],
  ["2026-03-29", "00:59", "Europe/London", "2026-03-29T00:59"],
  ["2026-03-29", "02:00", "Europe/London", "2026-03-29T01:00"],
  ["2024-02-29", "00:00", "Asia/Kathmandu", "2024-02-28T18:15"],
  ["2025-12-31", "23:59", "Pacific/Kiritimati", "2025-12-31T09:59"],
  ["2025-12-31", "23:59", "Pacific/Pago_Pago", "2026-01-01T10:59"],
])("%s %s in %s is %s Z", (date, time, zone, moment) => {
  expect(meant(date, time, zone)).toEqual({ shown: "once", at: utc(moment) });
});

test.each([
  ["2025-10-26", "01:00", "Europe/London", "2025-10-26T00:00", "2025-10-26T01:00"],
  ["2025-10-26", "01:59", "Europe/London", "2025-10-26T00:59", "2025-10-26T01:59"],
  ["2025-11-02", "01:30", "America/New_York", "2025-11-02T05:30", "2025-11-02T06:30"],
  // Clocks here change by half an hour.
  ["2026-04-05", "01:45", "Australia/Lord_Howe", "2026-04-04T14:45", "2026-04-04T15:15"],
])("%s %s in %s comes twice: the earlier is meant, and both are said", (date, time, zone, a, b) => {
  const [earlier, later] = [utc(a), utc(b)];
  expect(meant(date, time, zone)).toEqual({ shown: "twice", at: earlier, earlier, later });
});

test.each([
  ["2026-03-29", "01:00", "Europe/London", "2026-03-29T00:00", "2026-03-29T01:00"],
  ["2026-03-29", "01:30", "Europe/London", "2026-03-29T00:30", "2026-03-29T01:30"],
  ["2025-10-05", "02:15", "Australia/Lord_Howe", "2025-10-04T15:15", "2025-10-04T15:45"],
  // A whole day left out.
  ["2011-12-30", "12:00", "Pacific/Apia", "2011-12-29T22:00", "2011-12-30T22:00"],
])("%s %s in %s never comes: the earlier is meant, and both are said", (date, time, zone, a, b) => {
  const [earlier, later] = [utc(a), utc(b)];
  expect(meant(date, time, zone)).toEqual({ shown: "never", at: earlier, earlier, later });
});

test.each([
  ["2025-02-29", "10:00", "not-a-date"],
  ["2025-13-01", "10:00", "not-a-date"],
  ["2025-00-10", "10:00", "not-a-date"],
  ["2025-04-31", "10:00", "not-a-date"],
  ["2025-04-00", "10:00", "not-a-date"],
  ["25-04-01", "10:00", "not-a-date"],
  ["", "10:00", "not-a-date"],
  ["2025-04-01", "24:00", "not-a-time"],
  ["2025-04-01", "9:00", "not-a-time"],
  ["2025-04-01", "10:60", "not-a-time"],
])("%s %s is no moment: %s", (date, time, refusal) => {
  expect(readyByOf({ date, time, zone: "Europe/London" }, wallClock)).toMatchObject({ refusal });
});

test("the moment shows what was said, and anything it shows is found again", () => {
  const zone = fc.constantFrom(
    "Europe/London",
    "America/New_York",
    "Asia/Kolkata",
    "Pacific/Chatham",
  );
  const moment = fc.integer({ min: utc("2020-01-01T00:00"), max: utc("2035-01-01T00:00") });
  fc.assert(
    fc.property(moment, zone, (ms, where) => {
      const whole = Math.floor(ms / 60_000) * 60_000;
      const two = (value: number) => String(value).padStart(2, "0");
      const { year, month, day, hour, minute } = wallClock(whole, where);
      const found = meant(
        `${year}-${two(month)}-${two(day)}`,
        `${two(hour)}:${two(minute)}`,
        where,
      );
      expect(found.shown).not.toBe("never");
      expect(
        found.shown === "once" ? [found.at] : [found.at, found.earlier, found.later],
      ).toContain(whole);
    }),
    { numRuns: 300 },
  );
});

/** When work has to begin, on the wall. */
function beginsAt(
  date: string,
  time: string,
  zone: string,
  jobOf: (readyBy: number) => Job,
): string {
  const { at } = meant(date, time, zone);
  const plan = scheduleJobs([jobOf(at)], limits(), at - 86_400_000);
  const startAt = plan.ok ? plan.latestStart[0]?.startAt : undefined;
  const { day, hour, minute } = wallClock(startAt ?? 0, zone);
  return `${day}. ${hour}:${String(minute).padStart(2, "0")}`;
}

// 12 h 20 min of work before 10:00. The night is 25 h, 24 h or 23 h long by the clock on the wall.
test.each([
  ["2025-10-26", "Europe/London", "25. 22:40"],
  ["2025-10-27", "Europe/London", "26. 21:40"],
  ["2026-03-29", "Europe/London", "28. 20:40"],
  ["2025-11-02", "America/New_York", "1. 22:40"],
  ["2026-04-05", "Australia/Lord_Howe", "4. 22:10"],
])("an overnight drip ready on %s in %s begins on the %s", (date, zone, begins) => {
  const drip = (readyBy: number): Job => ({
    ...job("a", 0, [wait("drip", 720), hands("bottle", 20)]),
    readyBy,
  });
  expect(beginsAt(date, "10:00", zone, drip)).toBe(begins);
});
