import fc from "fast-check";
import { expect, test } from "vitest";
import { runsOutAt } from "../../../core/board/run-out.ts";

const DAY = 86_400_000;
const NOW = 1_000_000_000_000;
const left = (leftMl: number, days: number) => ({ leftMl, useBy: NOW + days * DAY });

// By hand, at 500 ml a day.
test.each<[string, readonly ReturnType<typeof left>[], number]>([
  ["nothing there", [], 0],
  ["two days' worth", [left(1000, 7)], 2],
  ["one after the other", [left(1000, 7), left(500, 9)], 3],
  ["the earlier use-by first, whatever the order", [left(500, 9), left(1000, 1)], 2],
  ["what is left past its use-by is thrown away", [left(4000, 3)], 3],
  ["past its use-by already", [left(4000, -1)], 0],
  ["past its use-by beside one that is not", [left(4000, -1), left(500, 9)], 1],
])("%s", (_, batches, days) => {
  expect((runsOutAt(batches, 500, NOW) - NOW) / DAY).toBe(days);
});

const batches = fc.array(
  fc.record({
    leftMl: fc.integer({ min: 0, max: 20_000 }),
    useBy: fc.integer({ min: NOW - 5 * DAY, max: NOW + 60 * DAY }),
  }),
  { maxLength: 6 },
);

test("property: not before now, not past the last use-by, and never later for pouring faster", () => {
  fc.assert(
    fc.property(batches, fc.integer({ min: 1, max: 5000 }), (some, rate) => {
      const at = runsOutAt(some, rate, NOW);
      expect(at).toBeGreaterThanOrEqual(NOW);
      expect(at).toBeLessThanOrEqual(Math.max(NOW, ...some.map(({ useBy }) => useBy)));
      expect(runsOutAt(some, rate * 2, NOW)).toBeLessThanOrEqual(at);
    }),
  );
});
