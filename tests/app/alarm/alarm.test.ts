import fc from "fast-check";
import { expect, test } from "vitest";
import { type Alarm, type AlarmKind, ringingAt } from "../../../app/alarm/alarm.ts";

const alarm = (key: string, dueAt: number, kind: AlarmKind = "look"): Alarm => ({
  key,
  kind,
  dueAt,
  label: `label of ${key}`,
});

test("nothing rings before its moment, and it rings at it", () => {
  expect(ringingAt([alarm("a", 1000)], 999)).toBeNull();
  expect(ringingAt([alarm("a", 1000)], 1000)?.alarms[0]?.lateBy).toBe(0);
  expect(ringingAt([], 1000)).toBeNull();
});

test("late alarms say how late, the longest overdue first", () => {
  const ringing = ringingAt([alarm("b", 5000), alarm("a", 1000), alarm("c", 90_000)], 61_000);
  expect(ringing?.alarms.map(({ key, lateBy }) => [key, lateBy])).toEqual([
    ["a", 60_000],
    ["b", 56_000],
  ]);
});

test.each<[readonly AlarmKind[], AlarmKind]>([
  [["done"], "done"],
  [["done", "look"], "look"],
  [["look", "do", "done"], "do"],
])("%j together sound as %s", (kinds, expected) => {
  const alarms = kinds.map((kind, i) => alarm(`${i}`, i, kind));
  expect(ringingAt(alarms, 100)?.kind).toBe(expected);
});

test("an alarm given twice rings once, as last given", () => {
  const ringing = ringingAt([alarm("a", 10), alarm("a", 20)], 100);
  expect(ringing?.alarms.map((one) => one.dueAt)).toEqual([20]);
});

test("exactly what is due rings", () => {
  const alarms = fc.array(
    fc.record({
      key: fc.string({ maxLength: 3 }),
      kind: fc.constantFrom<AlarmKind>("do", "look", "done"),
      dueAt: fc.integer({ min: 0, max: 1000 }),
      label: fc.constant(""),
    }),
  );
  const byKey = (all: readonly Alarm[]) => new Map(all.map((one) => [one.key, one]));
  fc.assert(
    fc.property(alarms, fc.integer({ min: 0, max: 1000 }), (all, now) => {
      const due = [...byKey(all).values()].filter((one) => one.dueAt <= now);
      const rung = ringingAt(all, now)?.alarms ?? [];
      expect(new Set(rung.map((one) => one.key))).toEqual(new Set(due.map((one) => one.key)));
      expect(rung.every((one) => one.lateBy === now - one.dueAt && one.lateBy >= 0)).toBe(true);
    }),
  );
});
