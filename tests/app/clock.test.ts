import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { phoneClock } from "../../app/clock.ts";

const DAY = 86_400_000;
/** HTML standard, timers: a delay is a signed 32-bit number of ms. */
const LONGEST = 2 ** 31 - 1;

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

test.each([0, 1, 1000, LONGEST, LONGEST + 1, 60 * DAY, 3 * LONGEST + 5])(
  "a call in %d ms comes then, once, and not before",
  (ms) => {
    const call = vi.fn();
    phoneClock.after(ms, call);
    if (ms > 0) vi.advanceTimersByTime(ms - 1);
    expect(call).toHaveBeenCalledTimes(0);
    vi.advanceTimersByTime(1);
    expect(call).toHaveBeenCalledTimes(1);
    vi.advanceTimersByTime(DAY);
    expect(call).toHaveBeenCalledTimes(1);
  },
);

test("stopped, it never comes, however far it had got", () => {
  const call = vi.fn();
  const stop = phoneClock.after(60 * DAY, call);
  vi.advanceTimersByTime(40 * DAY);
  stop();
  vi.advanceTimersByTime(40 * DAY);
  expect(call).not.toHaveBeenCalled();
  expect(vi.getTimerCount()).toBe(0);
});

test("every so often until stopped", () => {
  const call = vi.fn();
  const stop = phoneClock.every(1000, call);
  vi.advanceTimersByTime(3500);
  stop();
  vi.advanceTimersByTime(3500);
  expect(call).toHaveBeenCalledTimes(3);
});
