import fc from "fast-check";
import { expect, test } from "vitest";
import { isoStamp, wallAhead } from "../../app/local-time.ts";
import { clockTime } from "../../app/words/format.ts";

// Whatever zone the tests run in: the two ways of reading the wall's clock must agree.
test.each([0, 1_773_151_234_567, 1_790_000_000_000, 1_767_225_599_999])(
  "at %d the clock on the wall shows UTC and what it is ahead",
  (at) => {
    const minutes = Math.floor((at + wallAhead(at)) / 60_000);
    const day = ((minutes % 1440) + 1440) % 1440;
    const two = (value: number) => String(value).padStart(2, "0");
    expect(`${two(Math.floor(day / 60))}:${two(day % 60)}`).toBe(clockTime(at));
  },
);

test("it is whole minutes, less than a day", () => {
  const ahead = wallAhead(1_773_151_234_567);
  expect(ahead % 60_000).toBe(0);
  expect(Math.abs(ahead)).toBeLessThan(86_400_000);
});

// Offsets as the zone database has them (IANA tz, 2025): known widely, from memory; the property
// below asks the engine's own parser.
test.each([
  ["2025-11-25T10:00:05.900Z", "UTC", "2025-11-25T10:00:05+00:00"],
  ["2025-11-25T10:00:05Z", "Europe/Madrid", "2025-11-25T11:00:05+01:00"],
  ["2025-07-01T10:00:00Z", "Europe/Madrid", "2025-07-01T12:00:00+02:00"],
  ["2025-01-01T02:00:00Z", "America/St_Johns", "2024-12-31T22:30:00-03:30"],
  ["2025-12-31T23:59:59Z", "Pacific/Kiritimati", "2026-01-01T13:59:59+14:00"],
])("%s in %s is %s", (at, zone, stamp) => {
  expect(isoStamp(Date.parse(at), zone)).toBe(stamp);
});

test("a stamp reads back as the second it was made of, in every zone", () => {
  const zones = fc.constantFrom("UTC", "Europe/Madrid", "America/New_York", "Asia/Kathmandu");
  // From 1980 to 2100.
  const moments = fc.integer({ min: 315_532_800_000, max: 4_102_444_800_000 });
  fc.assert(
    fc.property(moments, zones, (at, zone) => {
      expect(Date.parse(isoStamp(at, zone))).toBe(Math.floor(at / 1000) * 1000);
    }),
    { seed: 2511, numRuns: 500 },
  );
});
