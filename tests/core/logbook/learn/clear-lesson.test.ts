import { expect, test } from "vitest";
import { clearLesson } from "../../../../core/logbook/learn/clear-lesson.ts";
import { kindOf, lessonOf } from "../../../../core/logbook/learn/house-learning.ts";
import type { BatchRecord } from "../../../../core/logbook/record.ts";
import { keptRecord } from "../../../support/world/learnt-batches.ts";

const MINUTE = 60_000;

const cleared = (day: number, minutes: number, demo = false): BatchRecord => ({
  ...keptRecord(day, 0.35, demo),
  cleared: { took: minutes * MINUTE, passes: 2, waits: {} },
});
/** The batch that asks is not over, and has run cloudy so far. */
function asking(demo = false): BatchRecord {
  const { ending: _, cleared: __, ...open } = keptRecord(40, 0.35, demo);
  return open;
}
const OTHERS = [5, 6, 5, 7, 6, 5].map((minutes, day) => cleared(day, minutes));

test("what the others teach of this kind, as the lesson itself has it", () => {
  const own = asking();
  const found = clearLesson([own, ...OTHERS], own.runId);
  const lesson = lessonOf(OTHERS, "clear", kindOf(own) ?? "");
  expect(found?.took).toMatchObject({ mean: lesson.mean, low: lesson.low, high: lesson.high });
  expect(found?.batches).toBe(6);
  expect(Math.round(found?.passes ?? 0)).toBe(2);
  // Six batches of five to seven minutes outweigh a stated 1.5 to 11.
  expect(found?.took.mean).toBeGreaterThan(4.5 * MINUTE);
  expect(found?.took.mean).toBeLessThan(7 * MINUTE);
});

test("the batch that asks does not teach itself, however it went", () => {
  const own = { ...cleared(40, 90), runId: asking().runId };
  const asked = asking();
  expect(clearLesson([own, ...OTHERS], own.runId)).toEqual(
    clearLesson([asked, ...OTHERS], asked.runId),
  );
});

test("one odd batch moves it little: it stays near the others", () => {
  const own = asking();
  const usual = clearLesson([own, ...OTHERS], own.runId);
  const odd = clearLesson([own, ...OTHERS, cleared(30, 240)], own.runId);
  expect(odd?.took.mean).toBeLessThan(1.25 * (usual?.took.mean ?? 0));
});

test("below three batches, of the other world, or unwashed: nothing is said", () => {
  const own = asking();
  expect(clearLesson([own, ...OTHERS.slice(0, 2)], own.runId)).toBeUndefined();
  const invented = [1, 2, 3, 4].map((day) => cleared(day, 5, true));
  expect(clearLesson([own, ...invented], own.runId)).toBeUndefined();
  const { wash: _, ...stirred } = own;
  expect(clearLesson([stirred, ...OTHERS], own.runId)).toBeUndefined();
  expect(clearLesson(OTHERS, "not-there")).toBeUndefined();
});
