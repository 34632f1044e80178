import fc from "fast-check";
import { expect, test } from "vitest";
import { type Contact, countWet, isWetContact } from "../../../app/parts/wet-watch.ts";

const finger: Contact = { lasted: 120, width: 20, most: 1, onHold: false, cancelled: false };

test.each<[string, Partial<Contact>, boolean]>([
  ["a finger's tap", {}, false],
  ["a drop", { lasted: 59 }, true],
  ["the shortest of taps", { lasted: 60 }, false],
  ["two at once", { most: 2 }, true],
  ["a palm", { width: 81 }, true],
  ["a broad thumb", { width: 80 }, false],
  ["a scroll, which the browser takes over", { cancelled: true, lasted: 20 }, false],
  ["a hold that was seen through", { onHold: true, lasted: 600 }, false],
  ["a hold let go a frame before the fill's end", { onHold: true, lasted: 583 }, false],
  ["a hold broken off", { onHold: true, lasted: 300 }, true],
  ["a hold the phone took away", { onHold: true, lasted: 700, cancelled: true }, true],
])("%s", (_, facts, wet) => {
  expect(isWetContact({ ...finger, ...facts })).toBe(wet);
});

/** At which of these moments the glass was taken for wet. */
function wetAt(moments: readonly number[]): number[] {
  let times: readonly number[] = [];
  return moments.filter((at) => {
    const count = countWet(times, at);
    times = count.times;
    return count.wet;
  });
}

test.each<[string, number[], number[]]>([
  ["two are chance", [0, 1000], []],
  ["three within 20 s are water", [0, 9000, 19_999], [19_999]],
  ["three in more than 20 s are not", [0, 9000, 20_000], []],
  ["it counts from anew afterwards", [0, 1, 2, 3, 4, 5], [2, 5]],
])("%s", (_, moments, expected) => {
  expect(wetAt(moments)).toEqual(expected);
});

test("water that is far enough apart is never taken for a wet glass", () => {
  const gaps = fc.array(fc.integer({ min: 10_000, max: 60_000 }), { maxLength: 40 });
  fc.assert(
    fc.property(gaps, (some) => {
      let at = 0;
      const moments = some.map((gap) => {
        at += gap;
        return at;
      });
      expect(wetAt(moments)).toEqual([]);
    }),
  );
});
