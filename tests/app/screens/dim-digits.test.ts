import fc from "fast-check";
import { expect, test } from "vitest";
import { dimDigits, wander } from "../../../app/screens/dim/digits.ts";

const SECOND = 1000;
const MINUTE = 60 * SECOND;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

test.each([
  [-5, "0:00"],
  [0, "0:00"],
  [400, "0:01"],
  [9 * SECOND, "0:09"],
  [4 * MINUTE + 7 * SECOND, "4:07"],
  [HOUR - SECOND, "59:59"],
  [HOUR - 1, "1h00"],
  [HOUR, "1h00"],
  [HOUR + SECOND, "1h01"],
  [11 * HOUR + 59 * MINUTE, "11h59"],
  [47 * HOUR + 59 * MINUTE, "47h59"],
  [48 * HOUR - 1, "2d 0h"],
  [51 * HOUR + 20 * MINUTE, "2d 3h"],
  [10 * DAY, "10d"],
  [34 * DAY + 5 * HOUR, "34d"],
])("%d ms left reads %s", (ms, text) => {
  expect(dimDigits(ms)).toBe(text);
});

test("never more than six signs, and never what could be two lengths", () => {
  const far = fc.integer({ min: 0, max: 90 * DAY });
  fc.assert(
    fc.property(far, (ms) => {
      const text = dimDigits(ms);
      expect(text.length).toBeLessThanOrEqual(6);
      const form = ms > HOUR - 1 ? /^\d{1,2}h\d\d$|^\dd \d{1,2}h$|^\d\dd$/ : /^\d{1,2}:\d\d$/;
      expect(text).toMatch(form);
    }),
  );
});

test("the face is elsewhere every minute, near the middle, and everywhere in the long run", () => {
  const day = Array.from({ length: 1440 }, (_, minute) => wander(minute));
  for (const [minute, { x, y }] of day.entries()) {
    const next = wander(minute + 1);
    expect(Math.abs(next.x - x)).toBe(5);
    expect(Math.abs(next.y - y)).toBe(5);
    expect(Math.abs(x)).toBeLessThanOrEqual(10);
    expect(Math.abs(y)).toBeLessThanOrEqual(18);
  }
  const spots = day.map(({ x, y }) => `${x} ${y}`);
  const longest = Math.max(
    ...[...new Set(spots)].map((one) => spots.filter((spot) => spot === one).length),
  );
  expect(longest / day.length).toBeLessThan(0.1);
});
