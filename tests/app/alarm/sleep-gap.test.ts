import fc from "fast-check";
import { expect, test } from "vitest";
import { sleepWatch } from "../../../app/alarm/sleep-gap.ts";

const SECOND = 1000;
const MINUTE = 60 * SECOND;
const START = 1_800_000_000_000;

/** Looks at these moments after the start, ms: out of sight but for the last. */
function away(...moments: readonly number[]) {
  const look = sleepWatch(START);
  const last = moments.length - 1;
  return moments.map((at, index) =>
    look({ wall: START + at, left: true, visible: index === last }),
  );
}

// The bounds are judgement: looks come every second, and a browser that throttles a hidden page
// looks once a minute (reference notes on timers).
test.each<[string, readonly number[], { fromMs: number; forMs: number } | null]>([
  ["seen again at once", [SECOND], null],
  ["away for 59 s", [59 * SECOND], null],
  ["away for exactly a minute", [MINUTE], null],
  ["away for a minute and a bit", [MINUTE + 1], { fromMs: 0, forMs: MINUTE + 1 }],
  ["away for 42 min", [42 * MINUTE], { fromMs: 0, forMs: 42 * MINUTE }],
  [
    "ran on for 3 s after it was left, then slept an hour",
    [SECOND, 2 * SECOND, 3 * SECOND, 60 * MINUTE],
    { fromMs: 3 * SECOND, forMs: 60 * MINUTE - 3 * SECOND },
  ],
  [
    "woken once a minute: one sleep, not many",
    [SECOND, MINUTE, 2 * MINUTE, 3 * MINUTE],
    { fromMs: SECOND, forMs: 3 * MINUTE - SECOND },
  ],
  ["out of sight but running all the time", [1, 2, 3, 4, 5].map((n) => n * 9 * SECOND), null],
  ["the clock went back meanwhile", [-60 * MINUTE], null],
])("%s", (_, moments, expected) => {
  const gaps = away(...moments).map(
    (gap) => gap && { fromMs: gap.fromMs - START, forMs: gap.forMs },
  );
  expect(gaps.at(-1)).toEqual(expected);
  expect(gaps.slice(0, -1).filter((gap) => gap !== null)).toEqual([]);
});

test("in sight without a break it was not asleep, however late a look is", () => {
  const look = sleepWatch(START);
  expect(look({ wall: START + 60 * MINUTE, left: false, visible: true })).toBeNull();
});

test("each sleep is told once", () => {
  const look = sleepWatch(START);
  const back = (wall: number) => look({ wall, left: true, visible: true });
  expect(back(START + 5 * MINUTE)).toEqual({ fromMs: START, forMs: 5 * MINUTE });
  expect(back(START + 5 * MINUTE + 10)).toBeNull();
  expect(back(START + 8 * MINUTE)).toEqual({ fromMs: START + 5 * MINUTE + 10, forMs: 179_990 });
});

test("sleeps follow one another, never overlap and end when it is seen again", () => {
  const looks = fc.array(
    fc.record({
      by: fc.integer({ min: 1, max: 20 * MINUTE }),
      left: fc.boolean(),
      visible: fc.boolean(),
    }),
    { maxLength: 40 },
  );
  fc.assert(
    fc.property(looks, (all) => {
      const look = sleepWatch(START);
      let [wall, free] = [START, START];
      for (const { by, left, visible } of all) {
        wall += by;
        const gap = look({ wall, left, visible });
        if (gap === null) continue;
        expect(visible).toBe(true);
        expect(gap.fromMs).toBeGreaterThanOrEqual(free);
        expect(gap.fromMs + gap.forMs).toBe(wall);
        expect(gap.forMs).toBeGreaterThan(MINUTE);
        free = wall;
      }
    }),
  );
});
