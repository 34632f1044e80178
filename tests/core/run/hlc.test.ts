import fc from "fast-check";
import { expect, test } from "vitest";
import { compareHlc, HLC_ZERO, type Hlc, nextHlc } from "../../../core/run/hlc.ts";

// Send rule of Kulkarni and others, "Logical Physical Clocks" (2014), figure 5, from memory.
test.each<[string, Hlc, number, Hlc]>([
  ["the clock has moved on", { ms: 10, n: 3 }, 11, { ms: 11, n: 0 }],
  ["within the same millisecond", { ms: 10, n: 3 }, 10, { ms: 10, n: 4 }],
  ["the clock was put back", { ms: 10, n: 0 }, 2, { ms: 10, n: 1 }],
  ["before anything", HLC_ZERO, 0, { ms: 0, n: 1 }],
  [
    "a count beyond any log, as only a file can say it",
    { ms: 10, n: 2 ** 53 - 1 },
    2,
    { ms: 11, n: 0 },
  ],
  ["the last count there is", { ms: 10, n: 1_000_000 }, 10, { ms: 11, n: 0 }],
  ["a clock before 1970", HLC_ZERO, -5, { ms: 0, n: 1 }],
])("%s", (_, last, wall, next) => {
  expect(nextHlc(last, wall)).toEqual(next);
});

const hlc = fc.record({ ms: fc.nat({ max: 20 }), n: fc.nat({ max: 5 }) });

test("property: stamps rise whatever the wall clock does, and never fall behind it", () => {
  fc.assert(
    fc.property(hlc, fc.array(fc.integer({ min: -10, max: 40 })), (from, walls) => {
      let last = from;
      for (const wall of walls) {
        const next = nextHlc(last, wall);
        expect(compareHlc(next, last)).toBeGreaterThan(0);
        expect(next.ms).toBeGreaterThanOrEqual(Math.max(wall, last.ms));
        last = next;
      }
    }),
  );
});

test("property: stamps are in one order", () => {
  fc.assert(
    fc.property(hlc, hlc, hlc, (a, b, c) => {
      expect(Math.sign(compareHlc(a, b))).toBe(0 - Math.sign(compareHlc(b, a)));
      if (compareHlc(a, b) <= 0 && compareHlc(b, c) <= 0) {
        expect(compareHlc(a, c)).toBeLessThanOrEqual(0);
      }
      expect(compareHlc(a, b) === 0).toBe(a.ms === b.ms && a.n === b.n);
    }),
  );
});
