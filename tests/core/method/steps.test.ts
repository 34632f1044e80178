import { expect, test } from "vitest";
import { procedureSchema } from "../../../core/method/procedure.ts";
import { BOTTLED, handsOn, reading, tastedWait, timedWait } from "../../../core/method/steps.ts";
import { HOUR } from "../../../core/quantity/time-units-table.ts";

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
