import fc from "fast-check";
import { expect, test } from "vitest";
import { localOf } from "../../../../app/local-time.ts";
import { closedSpans, localDays } from "../../../../core/board/schedule/hours.ts";

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
const at = (iso: string): number => Date.parse(iso);
const shown = (ms: number, zone: string): string => {
  const { day, hour, minute } = localOf(ms, zone);
  return `${day}, ${hour}:${String(minute).padStart(2, "0")}`;
};
const closed = (from: string, to: string, zone: string, hours = { from: "10:00", to: "23:00" }) =>
  closedSpans(hours, zone, { from: at(from), to: at(to) }, localOf);

test("the night between two days, as the clocks there show it", () => {
  const spans = closed("2025-11-24T12:00:00Z", "2025-11-26T12:00:00Z", "Europe/Paris");
  expect(
    spans.map(({ from, to }) => [shown(from, "Europe/Paris"), shown(to, "Europe/Paris")]),
  ).toEqual([
    ["24, 23:00", "25, 10:00"],
    ["25, 23:00", "26, 10:00"],
  ]);
  expect(spans.every(({ from, to }) => to - from === 11 * HOUR)).toBe(true);
});

test("hours past midnight end on the next day", () => {
  const hours = { from: "16:00", to: "02:00" };
  const [span] = closed("2025-11-24T20:00:00Z", "2025-11-26T00:00:00Z", "UTC", hours);
  expect(span).toEqual({ from: at("2025-11-25T02:00:00Z"), to: at("2025-11-25T16:00:00Z") });
});

test("the evening of the last day is told too, however the days fall", () => {
  const last = closed("2025-11-24T20:00:00Z", "2025-11-25T23:30:00Z", "UTC").at(-1);
  expect(last).toEqual({ from: at("2025-11-25T23:00:00Z"), to: at("2025-11-25T23:30:00Z") });
  // Exactly a day, begun after closing.
  const whole = closed("2025-11-24T23:30:00Z", "2025-11-25T23:30:00Z", "UTC").at(-1);
  expect(whole).toEqual(last);
});

// The clocks of this zone went back on 26 October 2025 and forward on 30 March 2025 (tz database).
test("a night with a clock change is as long as it is", () => {
  const [autumn] = closed("2025-10-25T12:00:00Z", "2025-10-26T12:00:00Z", "Europe/Paris");
  const [spring] = closed("2025-03-29T12:00:00Z", "2025-03-30T12:00:00Z", "Europe/Paris");
  expect((autumn?.to ?? 0) - (autumn?.from ?? 0)).toBe(12 * HOUR);
  expect((spring?.to ?? 0) - (spring?.from ?? 0)).toBe(10 * HOUR);
});

test("the same time twice: somebody is always in", () => {
  expect(
    closed("2025-11-24T00:00:00Z", "2025-11-30T00:00:00Z", "UTC", { from: "08:00", to: "08:00" }),
  ).toEqual([]);
});

test("hours that are no times are a mistake of ours", () => {
  expect(() =>
    closed("2025-11-24T00:00:00Z", "2025-11-25T00:00:00Z", "UTC", { from: "8", to: "10:00" }),
  ).toThrow(RangeError);
});

test("a moment is closed exactly when the clock on the wall is outside the hours", () => {
  const zones = fc.constantFrom("UTC", "Europe/Paris", "America/New_York", "Asia/Kolkata");
  const hour = fc.integer({ min: 0, max: 23 });
  const start = at("2025-03-01T00:00:00Z");
  fc.assert(
    fc.property(
      zones,
      hour,
      hour,
      fc.integer({ min: 0, max: 300 * 24 * 60 }),
      (zone, a, b, minute) => {
        // Hours that a clock change could show twice or never are told apart by readyByOf's own tests.
        fc.pre(a !== b && a > 3 && b > 3);
        const moment = start + minute * 60_000;
        const two = (value: number) => `${String(value).padStart(2, "0")}:00`;
        const spans = closedSpans(
          { from: two(a), to: two(b) },
          zone,
          { from: moment - DAY, to: moment + DAY },
          localOf,
        );
        const now = localOf(moment, zone).hour;
        const open = a < b ? now >= a && now < b : now >= a || now < b;
        expect(spans.some(({ from, to }) => moment >= from && moment < to)).toBe(!open);
      },
    ),
  );
});

test("days are as long as the clocks there make them", () => {
  const hours = (from: string) =>
    localDays(at(from), 3, "Europe/Paris", localOf).map(({ from: a, to: b }) => (b - a) / HOUR);
  expect(hours("2025-10-25T10:00:00Z")).toEqual([24, 25, 24]);
  expect(hours("2025-03-29T10:00:00Z")).toEqual([24, 23, 24]);
  expect(localDays(at("2025-11-25T23:30:00Z"), 1, "Europe/Paris", localOf)).toEqual([
    { from: at("2025-11-25T23:00:00Z"), to: at("2025-11-26T23:00:00Z") },
  ]);
});
