import fc from "fast-check";
import { expect, test } from "vitest";
import { usageOf } from "../../../core/logbook/usage.ts";
import type { Stock } from "../../../core/run/stock.ts";

const DAY = 86_400_000;
const NOW = Date.parse("2025-11-25T21:00:00Z");
const ago = (days: number): number => NOW - days * DAY;

type Poured = readonly (readonly [daysAgo: number, ml: number])[];

const batch = (bottledDaysAgo: number, poured: Poured, rest: Partial<Stock> = {}) => ({
  bottled: { at: ago(bottledDaysAgo), bottles: [], useBy: NOW + 30 * DAY },
  stock: {
    bottledMl: 10_000,
    leftMl: 5000,
    overMl: 0,
    poured: poured.map(([days, ml]) => ({ at: ago(days), ml })),
    ...rest,
  },
});

test("too few evenings, or too few days, say nothing yet", () => {
  expect(usageOf([], NOW)).toBeUndefined();
  expect(
    usageOf(
      [
        batch(20, [
          [1, 500],
          [2, 500],
        ]),
      ],
      NOW,
    ),
  ).toBeUndefined();
  expect(
    usageOf(
      [
        batch(3, [
          [0, 500],
          [1, 500],
          [2, 500],
        ]),
      ],
      NOW,
    ),
  ).toBeUndefined();
});

test("what was poured four weeks ago to the day no longer counts", () => {
  const evenings = [1, 3, 5, 27].map((days) => [days, 500] as const);
  const use = (poured: Poured) => usageOf([batch(40, poured)], NOW);
  // By hand: 2 l in the 28 days from today back.
  expect(use(evenings)).toEqual({ mlPerDay: 2000 / 28, evenings: 4, days: 28 });
  expect(use([...evenings, [28, 9000]])).toEqual(use(evenings));
});

// By hand: 4 evenings of 500 ml in the ten days 0 to 9 days ago.
test("days without a pour count too", () => {
  const use = usageOf(
    [
      batch(9, [
        [1, 500],
        [3, 500],
        [5, 500],
        [8, 500],
      ]),
    ],
    NOW,
  );
  expect(use).toEqual({ mlPerDay: 200, evenings: 4, days: 10 });
});

test("only the last four weeks count", () => {
  const old = batch(60, [
    [59, 9000],
    [40, 9000],
    [10, 280],
    [5, 280],
    [1, 280],
  ]);
  expect(usageOf([old], NOW)).toEqual({ mlPerDay: 30, evenings: 3, days: 28 });
});

// By hand: quartiles of 100, 100, 110, 120, 5000 are 100 and 120, so the fence stands at 150.
test("one private party counts no more than a very good evening", () => {
  const use = usageOf(
    [
      batch(9, [
        [1, 100],
        [2, 100],
        [3, 110],
        [4, 120],
        [5, 5000],
      ]),
    ],
    NOW,
  );
  expect(use?.mlPerDay).toBeCloseTo((100 + 100 + 110 + 120 + 150) / 10, 9);
});

test("days between two batches, when there was none to pour, do not count", () => {
  const first = batch(
    20,
    [
      [19, 300],
      [18, 300],
    ],
    {
      leftMl: 0,
      ended: { at: ago(17), how: "spent", reason: "" },
    },
  );
  const second = batch(4, [
    [3, 300],
    [1, 300],
  ]);
  expect(usageOf([first, second], NOW)).toEqual({ mlPerDay: 1200 / 9, evenings: 4, days: 9 });
});

test("a batch that was poured dry was there until its last pour", () => {
  const dry = batch(
    20,
    [
      [19, 300],
      [17, 300],
      [14, 300],
    ],
    { leftMl: 0 },
  );
  expect(usageOf([dry], NOW)?.days).toBe(7);
});

test("bottles that stand about past their use-by are not there to be poured", () => {
  const fresh = batch(9, [
    [1, 500],
    [3, 500],
    [5, 500],
  ]);
  const forgotten = { ...batch(27, []), bottled: { at: ago(27), bottles: [], useBy: ago(20) } };
  expect(usageOf([fresh, forgotten], NOW)?.days).toBe(10 + 8);
  expect(usageOf([fresh], NOW)?.days).toBe(10);
});

test("two batches poured on one evening are one evening", () => {
  const use = usageOf(
    [
      batch(9, [
        [1, 200],
        [2, 300],
        [3, 400],
      ]),
      batch(9, [[1, 100]]),
    ],
    NOW,
  );
  expect(use).toEqual({ mlPerDay: 100, evenings: 3, days: 10 });
});

test("property: never less than nothing, never more than what was poured", () => {
  const poured = fc.array(
    fc.tuple(fc.integer({ min: 0, max: 27 }), fc.integer({ min: 1, max: 9000 })),
    {
      maxLength: 20,
    },
  );
  fc.assert(
    fc.property(poured, (some) => {
      const use = usageOf([batch(27, some)], NOW);
      if (use === undefined) return;
      const sum = some.reduce((total, [, ml]) => total + ml, 0);
      expect(use.mlPerDay).toBeGreaterThan(0);
      expect(use.mlPerDay * use.days).toBeLessThanOrEqual(sum + 1e-6);
    }),
  );
});
