import { expect, test } from "vitest";
import { type ClockSample, clockJump } from "../../../app/alarm/clock-jump.ts";

const HOUR = 3_600_000;
const start: ClockSample = { wall: 1_800_000_000_000, mono: 50_000, visible: true };
const after = (wall: number, mono: number, visible = true): ClockSample => ({
  wall: start.wall + wall,
  mono: start.mono + mono,
  visible,
});

// Judgement: an offset that changes by more than 2 s between two ticks at most
// 3 s apart, in sight throughout, is a clock that was set. DST and zones do not move epoch ms.
test.each<[string, ClockSample, number | null]>([
  ["an ordinary second", after(1000, 1000), null],
  ["set an hour forward", after(1000 + HOUR, 1000), HOUR],
  ["set an hour back", after(1000 - HOUR, 1000), -HOUR],
  ["the network corrects by 300 ms", after(1300, 1000), null],
  ["exactly 2 s is still a correction", after(3000, 1000), null],
  ["just over 2 s", after(3001, 1000), 2001],
  ["just over 2 s back", after(-1001, 1000), -2001],
  ["samples 3 s apart are close enough", after(3000 + HOUR, 3000), HOUR],
  ["samples further apart may have slept", after(3001 + HOUR, 3001), null],
  ["out of sight nobody can tell", after(1000 + HOUR, 1000, false), null],
  ["an 8 h sleep with the steady clock stopped, out of sight", after(8 * HOUR, 200, false), null],
  ["a reload begins the steady clock anew", after(1000, -40_000), null],
])("%s", (_, now, expected) => {
  expect(clockJump(start, now)).toBe(expected);
});

test("a clock that drifts by 1 s at each look is set by none of them", () => {
  const jumps = Array.from({ length: 60 }, (_, i) =>
    clockJump(after(i * 2000, i * 1000), after((i + 1) * 2000, (i + 1) * 1000)),
  );
  expect(new Set(jumps)).toEqual(new Set([null]));
});
