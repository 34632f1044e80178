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

test("calls at one pace share one timer, and each is stopped by itself", () => {
  const [one, other] = [vi.fn(), vi.fn()];
  const stopOne = phoneClock.every(1000, one);
  vi.advanceTimersByTime(500);
  const stopOther = phoneClock.every(1000, other);
  const stopAgain = phoneClock.every(1000, other);
  expect(vi.getTimerCount()).toBe(1);
  vi.advanceTimersByTime(500);
  expect([one, other].map((call) => call.mock.calls.length)).toEqual([1, 2]);
  stopOne();
  stopAgain();
  stopAgain();
  vi.advanceTimersByTime(1000);
  expect([one, other].map((call) => call.mock.calls.length)).toEqual([1, 3]);
  stopOther();
  expect(vi.getTimerCount()).toBe(0);
  phoneClock.every(1000, one)();
  expect(vi.getTimerCount()).toBe(0);
});

test("a call that fails is reported, and keeps no other from its turn", () => {
  const report = vi.fn();
  vi.stubGlobal("reportError", report);
  const fault = new Error("no room");
  const after = vi.fn();
  const stops = [
    phoneClock.every(1000, () => {
      throw fault;
    }),
    phoneClock.every(1000, after),
  ];
  vi.advanceTimersByTime(2000);
  for (const stop of stops) stop();
  vi.unstubAllGlobals();
  expect(report.mock.calls).toEqual([[fault], [fault]]);
  expect(after).toHaveBeenCalledTimes(2);
});
