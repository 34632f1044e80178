import fc from "fast-check";
import { expect, test } from "vitest";
import type { Alarm } from "../../../app/alarm/alarm.ts";
import { watchAlarms } from "../../../app/alarm/watcher.ts";

/** A clock moved by hand; a frozen page's callbacks are simply not called. */
function handClock(start = 0) {
  let now = start;
  const runs = new Set<() => void>();
  return {
    clock: {
      now: () => now,
      every: (_: number, run: () => void) => {
        runs.add(run);
        return () => runs.delete(run);
      },
    },
    set: (to: number) => {
      now = to;
    },
    tick: (by: number) => {
      now += by;
      for (const run of runs) run();
    },
    running: () => runs.size,
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
      alarms: readonly { key: string; lateBy: number }[];
    }) => told.push(`ring ${kind} ${due.map((one) => `${one.key}+${one.lateBy}`).join(" ")}`),
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

const swap: Alarm = { key: "swap", kind: "do", dueAt: 5000, label: "Swap the vessel" };
const taste: Alarm = { key: "taste", kind: "look", dueAt: 6000, label: "Taste" };

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

test("keys that contain one another's marks are not taken for each other", () => {
  const odd = (key: string): Alarm => ({ ...swap, key });
  const { hand, told, begin, give } = watched(5000, [odd('a","b')]);
  begin();
  give([odd("a"), odd("b")]);
  hand.tick(1000);
  expect(told.filter((line) => line.startsWith("ring"))).toHaveLength(2);
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
