import fc from "fast-check";
import { expect, test } from "vitest";
import type { Alarm } from "../../../app/alarm/alarm.ts";
import { watchAlarms } from "../../../app/alarm/watcher.ts";

/** A clock moved by hand; a frozen page's callbacks are simply not called. */
function handClock(start = 0) {
  let now = start;
  const runs = new Set<() => void>();
  const timers = new Set<{ readonly at: number; readonly run: () => void }>();
  return {
    clock: {
      now: () => now,
      every: (_: number, run: () => void) => {
        runs.add(run);
        return () => runs.delete(run);
      },
      after: (ms: number, run: () => void) => {
        const timer = { at: now + ms, run };
        timers.add(timer);
        return () => timers.delete(timer);
      },
    },
    set: (to: number) => {
      now = to;
    },
    tick: (by: number) => {
      now += by;
      for (const run of runs) run();
    },
    /** Only the timers for a moment of their own go off, each when it is time. */
    pass: (by: number) => {
      const until = now + by;
      for (;;) {
        const [next] = [...timers].sort((a, b) => a.at - b.at);
        if (next === undefined || next.at > until) break;
        timers.delete(next);
        now = Math.max(now, next.at);
        next.run();
      }
      now = until;
    },
    armed: () => [...timers].map(({ at }) => at),
    running: () => runs.size + timers.size,
  };
}

function watched(start: number, first: readonly Alarm[]) {
  const hand = handClock(start);
  let alarms = first;
  const told: string[] = [];
  const watching = {
    clock: hand.clock,
    alarms: () => alarms,
    onRing: ({
      kind,
      alarms: due,
    }: {
      kind: string;
      alarms: readonly { runId: string; lateBy: number }[];
    }) => told.push(`ring ${kind} ${due.map((one) => `${one.runId}+${one.lateBy}`).join(" ")}`),
    onStill: () => told.push("still"),
    onStop: () => told.push("stop"),
  };
  const begin = () => watchAlarms(watching);
  return {
    hand,
    told,
    begin,
    give: (next: readonly Alarm[]) => {
      alarms = next;
    },
  };
}

const visit = "curdle#1";
const swap: Alarm = { runId: "swap", visit, kind: "do", dueAt: 5000, label: "Swap the vessel" };
const taste: Alarm = { runId: "taste", visit, kind: "look", dueAt: 6000, label: "Taste" };

test("rings when due, goes on, stops when heard", () => {
  const { hand, told, begin, give } = watched(0, [swap]);
  begin();
  hand.tick(4999);
  expect(told).toEqual([]);
  hand.tick(1);
  hand.tick(1000);
  give([]);
  hand.tick(1000);
  hand.tick(1000);
  expect(told).toEqual(["ring do swap+0", "still", "stop"]);
});

test("a watcher made after a reload rings late alarms at its first look and says how late", () => {
  const { told, begin } = watched(2_525_000, [swap]);
  begin();
  expect(told).toEqual(["ring do swap+2520000"]);
});

test("asleep for a day, it rings at the look on return", () => {
  const { hand, told, begin } = watched(0, [swap]);
  const watcher = begin();
  hand.set(86_400_000);
  watcher.look();
  expect(told).toEqual(["ring do swap+86395000"]);
});

test("a second alarm rings anew, and so does what is left of the two", () => {
  const { hand, told, begin, give } = watched(0, [taste, swap]);
  begin();
  hand.tick(5000);
  hand.tick(1000);
  give([taste]);
  hand.tick(1000);
  expect(told).toEqual(["ring do swap+0", "ring do swap+1000 taste+0", "ring look taste+1000"]);
});

test("a clock set back takes back what is not due any more", () => {
  const { hand, told, begin } = watched(0, [swap]);
  begin();
  hand.tick(5000);
  hand.tick(-3_600_000);
  expect(told).toEqual(["ring do swap+0", "stop"]);
});

test("an alarm moved later by a new forecast stops, then rings at its new moment", () => {
  const { hand, told, begin, give } = watched(0, [swap]);
  begin();
  hand.tick(5000);
  give([{ ...swap, dueAt: 9000 }]);
  hand.tick(1000);
  hand.tick(3000);
  expect(told).toEqual(["ring do swap+0", "stop", "ring do swap+0"]);
});

test("ended, it stops the sound and the clock, once", () => {
  const { hand, told, begin } = watched(5000, [swap]);
  const watcher = begin();
  watcher.end();
  watcher.end();
  expect(hand.running()).toBe(0);
  expect(told).toEqual(["ring do swap+0", "stop"]);
});

test("names that contain one another's marks are not taken for each other", () => {
  const odd = (runId: string): Alarm => ({ ...swap, runId });
  const { hand, told, begin, give } = watched(5000, [odd('a","b')]);
  begin();
  give([odd("a"), odd("b")]);
  hand.tick(1000);
  expect(told.filter((line) => line.startsWith("ring"))).toHaveLength(2);
});

test("it looks at the very moment when something falls due, and at the next one after that", () => {
  const { hand, told, begin } = watched(0, [swap, taste]);
  begin();
  expect(hand.armed()).toEqual([5000]);
  hand.pass(4999);
  expect(told).toEqual([]);
  hand.pass(1);
  expect(told).toEqual(["ring do swap+0"]);
  expect(hand.armed()).toEqual([6000]);
  hand.pass(1000);
  expect(told.at(-1)).toBe("ring do swap+1000 taste+0");
  expect(hand.armed()).toEqual([]);
});

test("the moment is found anew at each look, and only one is waited for", () => {
  const { hand, begin, give } = watched(0, [swap]);
  const watcher = begin();
  give([taste]);
  watcher.look();
  expect(hand.armed()).toEqual([6000]);
  hand.set(1000);
  give([swap, taste]);
  hand.tick(0);
  expect(hand.armed()).toEqual([5000]);
  give([]);
  watcher.look();
  expect(hand.armed()).toEqual([]);
});

test("a timer that goes off a little early waits for the rest", () => {
  const { hand, told, begin } = watched(0, [swap]);
  begin();
  hand.set(4999);
  hand.pass(1);
  expect(told).toEqual(["ring do swap+0"]);
});

test("whatever looks were missed, after any look it rings exactly when something is due", () => {
  const steps = fc.array(
    fc.record({ by: fc.integer({ min: -2000, max: 9000 }), heard: fc.boolean() }),
    { maxLength: 30 },
  );
  fc.assert(
    fc.property(steps, (moves) => {
      const { hand, told, begin, give } = watched(0, [swap, taste]);
      let left = [swap, taste];
      begin();
      for (const { by, heard } of moves) {
        if (heard) left = left.slice(1);
        give(left);
        hand.tick(by);
        const due = left.some((one) => one.dueAt <= hand.clock.now());
        const last = told.at(-1) ?? "stop";
        expect(last !== "stop").toBe(due);
      }
    }),
  );
});
