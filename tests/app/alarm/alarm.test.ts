import fc from "fast-check";
import { expect, test } from "vitest";
import { type Alarm, keyOf, ringingAt } from "../../../app/alarm/alarm.ts";
import type { AlarmKind } from "../../../core/run/alarm.ts";

const alarm = (runId: string, dueAt: number, kind: AlarmKind = "look"): Alarm => ({
  runId,
  visit: "curdle#1",
  kind,
  dueAt,
  label: `label of ${runId}`,
});

test("nothing rings before its moment, and it rings at it", () => {
  expect(ringingAt([alarm("a", 1000)], 999)).toBeNull();
  expect(ringingAt([alarm("a", 1000)], 1000)?.alarms[0]?.lateBy).toBe(0);
  expect(ringingAt([], 1000)).toBeNull();
});

test("late alarms say how late, the longest overdue first", () => {
  const ringing = ringingAt([alarm("b", 5000), alarm("a", 1000), alarm("c", 90_000)], 61_000);
  expect(ringing?.alarms.map(({ runId, lateBy }) => [runId, lateBy])).toEqual([
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

test("an alarm given twice rings once, as last given; one that moved is another", () => {
  const twice = [alarm("a", 10), { ...alarm("a", 10), label: "again" }];
  expect(ringingAt(twice, 100)?.alarms.map((one) => one.label)).toEqual(["again"]);
  const moved = ringingAt([alarm("a", 10), alarm("a", 20)], 100);
  expect(moved?.alarms.map((one) => one.dueAt)).toEqual([10, 20]);
});

test("whatever a batch and its steps are called, no two alarms are taken for one", () => {
  const name = fc.string({ unit: fc.constantFrom("a", "#", "/", '"', ","), maxLength: 4 });
  const due = fc.record({ runId: name, visit: name, dueAt: fc.nat(3) });
  fc.assert(
    fc.property(due, due, (one, other) => {
      const same = JSON.stringify(one) === JSON.stringify(other);
      const key = (what: typeof one) => keyOf({ ...what, kind: "look" });
      expect(key(one) === key(other)).toBe(same);
    }),
  );
});

test("exactly what is due rings", () => {
  const alarms = fc.array(
    fc.record({
      runId: fc.string({ maxLength: 2 }),
      visit: fc.constantFrom("curdle#1", "curdle#2"),
      kind: fc.constantFrom<AlarmKind>("do", "look", "done"),
      dueAt: fc.integer({ min: 0, max: 1000 }),
      label: fc.constant(""),
    }),
  );
  fc.assert(
    fc.property(alarms, fc.integer({ min: 0, max: 1000 }), (all, now) => {
      const due = all.filter((one) => one.dueAt <= now);
      const rung = ringingAt(all, now)?.alarms ?? [];
      expect(new Set(rung.map(keyOf))).toEqual(new Set(due.map(keyOf)));
      expect(rung.every((one) => one.lateBy === now - one.dueAt && one.lateBy >= 0)).toBe(true);
      expect(new Set(rung.map(keyOf)).size).toBe(rung.length);
    }),
  );
});
