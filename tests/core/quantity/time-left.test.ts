import fc from "fast-check";
import { expect, test } from "vitest";
import { countdown, duration } from "../../../core/quantity/time-left.ts";

const SECOND = 1000;
const MINUTE = 60 * SECOND;
const HOUR = 60 * MINUTE;

test.each([
  [-5 * SECOND, "0:00"],
  [1, "0:01"],
  [247 * SECOND, "4:07"],
  [10 * MINUTE, "10:00"],
  [HOUR + 4 * MINUTE + 7 * SECOND, "1:04:07"],
  [48 * HOUR - SECOND, "47:59:59"],
  [51 * HOUR, "2 j 3 h"],
])("%i ms are left: %s", (ms, shown) => {
  expect(countdown(ms, "j")).toBe(shown);
});

test.each([
  [-MINUTE, "0 s"],
  [12 * SECOND, "12 s"],
  [42 * MINUTE, "42 min"],
  [2 * HOUR, "2 h"],
  [125 * MINUTE, "2 h 05 min"],
  [76 * HOUR, "3 d 4 h"],
])("it took %i ms: %s", (ms, shown) => {
  expect(duration(ms, "d")).toBe(shown);
});

test("a countdown never shows more than a second over what is left, nor less than what is left", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 48 * HOUR - SECOND }), (ms) => {
      const shown = countdown(ms, "d")
        .split(":")
        .reduce((sum, part) => sum * 60 + Number(part), 0);
      expect(shown * SECOND).toBeGreaterThanOrEqual(ms);
      expect(shown * SECOND).toBeLessThan(ms + SECOND);
    }),
  );
});
