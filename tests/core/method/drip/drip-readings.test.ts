import fc from "fast-check";
import { expect, test } from "vitest";
import { siftReadings } from "../../../../core/method/drip/drip-readings.ts";

const at = (atMs: number, ml: number) => ({ atMs, ml });

test.each([
  ["lower than before", at(30, 800), "lower-than-before"],
  ["too little to measure", at(5, 1), "too-little"],
  ["before the drip", at(0, 700), "before-the-drip"],
  ["twice at one moment", at(20, 950), "same-moment"],
] as const)("keeps out a reading %s", (_, wrong, why) => {
  const good = [at(10, 500), at(20, 900), at(40, 1200)];
  const { used, keptOut } = siftReadings([...good, wrong], 1000);
  expect(used).toEqual(good);
  expect(keptOut).toEqual([{ ...wrong, why }]);
});

test("from a five-hundredth of what is expected on, a jug shows something", () => {
  expect(siftReadings([at(5, 9.9)], 5000).keptOut).toHaveLength(1);
  expect(siftReadings([at(5, 10)], 5000).used).toHaveLength(1);
});

test("sorts by time, and a level that stands still is a reading", () => {
  const { used, keptOut } = siftReadings([at(20, 500), at(10, 500), at(15, 500)], 1000);
  expect(used.map(({ atMs }) => atMs)).toEqual([10, 15, 20]);
  expect(keptOut).toEqual([]);
});

test("whatever is written down, what is used goes up and nothing is lost", () => {
  const readings = fc.array(
    fc.record({ atMs: fc.integer({ min: -5, max: 50 }), ml: fc.integer({ min: -5, max: 2000 }) }),
  );
  fc.assert(
    fc.property(readings, (some) => {
      const { used, keptOut } = siftReadings(some, 1000);
      expect(used.length + keptOut.length).toBe(some.length);
      for (const [i, { atMs, ml }] of used.entries()) {
        expect(atMs).toBeGreaterThan(used[i - 1]?.atMs ?? 0);
        expect(ml).toBeGreaterThanOrEqual(used[i - 1]?.ml ?? 1);
      }
    }),
  );
});

test.each([at(Number.NaN, 1), at(1, Number.NaN), at(Number.POSITIVE_INFINITY, 1)])(
  "refuses what is no number: %o",
  (wrong) => {
    expect(() => siftReadings([wrong], 1000)).toThrow("two finite numbers");
  },
);
