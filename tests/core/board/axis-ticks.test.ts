import fc from "fast-check";
import { expect, test } from "vitest";
import { amountTicks, clockTicks, roundTicks } from "../../../core/board/axis-ticks.ts";

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

test("times of day fall on whole steps of the clock on the wall", () => {
  // 14:10 to 21:40 in a zone 5 h 30 min ahead of UTC.
  const zone = 5.5 * HOUR;
  const from = 10 * DAY + 14 * HOUR + 10 * MINUTE - zone;
  const ticks = clockTicks(from, from + 7.5 * HOUR, 4, zone);
  expect(ticks.map((at) => (at + zone - 10 * DAY) / HOUR)).toEqual([16, 18, 20]);
});

test.each([
  [40 * MINUTE, 10 * MINUTE],
  [2 * HOUR, 30 * MINUTE],
  [9 * HOUR, 2 * HOUR],
  [2 * DAY, 12 * HOUR],
  [9 * DAY, 2 * DAY],
])("over %d ms they stand %d ms apart", (length, step) => {
  const [first = 0, second = 0] = clockTicks(7 * MINUTE, 7 * MINUTE + length, 4, 0);
  expect(second - first).toBe(step);
});

test.each([
  [4300, 1, [1000, 2000, 3000, 4000]],
  [900, 1, [200, 400, 600, 800]],
  // 30 ml to the ounce of a bar: 143 oz, marked at 50 and 100.
  [4300, 30, [1500, 3000]],
])("amounts up to %d, shown in units of %d", (to, unit, ticks) => {
  expect(amountTicks(to, 4, unit)).toEqual(ticks);
});

test("property: few, in order, inside, evenly apart, and never none over a long axis", () => {
  const length = fc.double({ min: 1, max: 300 * DAY, noNaN: true });
  const zone = fc.integer({ min: -14 * 60, max: 14 * 60 });
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 2e12 }), length, zone, (from, long, minutes) => {
      const ticks = clockTicks(from, from + long, 4, minutes * MINUTE);
      expect(ticks.length).toBeLessThanOrEqual(4);
      if (long > 30 * MINUTE) expect(ticks.length).toBeGreaterThan(0);
      for (const at of ticks) {
        expect(at).toBeGreaterThanOrEqual(from);
        expect(at).toBeLessThanOrEqual(from + long);
      }
      const gaps = ticks.slice(1).map((at, i) => at - (ticks[i] ?? 0));
      expect(new Set(gaps).size).toBeLessThanOrEqual(1);
    }),
  );
  fc.assert(
    fc.property(fc.double({ min: 5, max: 1e6, noNaN: true }), fc.constantFrom(1, 30), (to, u) => {
      const ticks = amountTicks(to, 4, u);
      expect(ticks.length).toBeLessThanOrEqual(4);
      expect(ticks.length).toBeGreaterThan(0);
      expect(ticks.at(-1)).toBeLessThanOrEqual(to * (1 + 1e-9));
      // At least a quarter of the axis is marked.
      expect(ticks.at(-1)).toBeGreaterThan(to / 4);
    }),
  );
});

test("round figures along it, as few as there is room for", () => {
  expect(roundTicks({ from: 0, to: 4300 }, 4)).toEqual([0, 2000, 4000]);
  expect(roundTicks({ from: 0.86, to: 0.97 }, 4).map((one) => Number(one.toFixed(9)))).toEqual([
    0.9, 0.95,
  ]);
});

test("ticks lie within and are never more than asked for", () => {
  const figure = fc.double({ min: -1e4, max: 1e4, noNaN: true });
  fc.assert(
    fc.property(figure, fc.double({ min: 1e-3, max: 1e4, noNaN: true }), (from, length) => {
      const ticks = roundTicks({ from, to: from + length }, 5);
      expect(ticks.length).toBeLessThanOrEqual(5);
      for (const tick of ticks) {
        expect(tick).toBeGreaterThanOrEqual(from - 1e-6 * (1 + Math.abs(from)));
        expect(tick).toBeLessThanOrEqual(from + length + 1e-6 * (1 + Math.abs(from) + length));
      }
    }),
  );
});

test("an axis without length or room is refused", () => {
  expect(() => clockTicks(5, 5, 4, 0)).toThrow(RangeError);
  expect(() => clockTicks(0, HOUR, 0, 0)).toThrow(RangeError);
  expect(() => amountTicks(0, 4, 1)).toThrow(RangeError);
  expect(() => amountTicks(9, 0, 1)).toThrow(RangeError);
  expect(() => roundTicks({ from: 0, to: 9 }, 0)).toThrow(RangeError);
});
