import { expect, test } from "vitest";
import { procedureSchema } from "../../../core/method/procedure.ts";
import {
  BOTTLED,
  HOUR,
  handsOn,
  MINUTE,
  reading,
  SECOND,
  tastedWait,
  timedWait,
} from "../../../core/method/steps.ts";

test("lengths of time are in ms", () => {
  expect([SECOND, MINUTE, HOUR]).toEqual([1000, 60_000, 3_600_000]);
});

test("each maker gives a step of its kind that a procedure may hold", () => {
  const steps = [
    handsOn("a", "pour"),
    reading("b", "yield", "yield"),
    timedWait("c", "rest", HOUR),
    tastedWait("d", HOUR, { longestFor: 2 * HOUR }),
    ...BOTTLED,
  ];
  expect(procedureSchema.safeParse({ id: "p", version: 1, steps }).success).toBe(true);
  expect(steps.map(({ kind }) => kind)).toEqual([
    "hands-on",
    "reading",
    "timed-wait",
    "watched-wait",
    "reading",
    "hands-on",
  ]);
  expect(steps[3]).toMatchObject({ asks: "taste", waitFor: HOUR, longestFor: 2 * HOUR });
});
