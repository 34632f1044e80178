import { expect, test } from "vitest";
import { DAIRY_WASH } from "../../../core/method/dairy-wash.ts";
import { PRACTICE_WASH } from "../../../core/method/practice-wash.ts";
import { isWait, procedureSchema } from "../../../core/method/procedure.ts";
import { usualPath } from "../../../core/method/usual-path.ts";

test("a run may be pinned to it, and it has the wash's own steps in their order", () => {
  expect(procedureSchema.parse(PRACTICE_WASH)).toEqual(PRACTICE_WASH);
  const bare = (steps: typeof DAIRY_WASH.steps) =>
    steps.map(({ waitFor, askEvery, ...rest }) => rest);
  expect(bare(PRACTICE_WASH.steps)).toEqual(bare(DAIRY_WASH.steps));
});

test("no wait is longer than ten seconds, and on the usual path they come to less than half a minute", () => {
  const waits = PRACTICE_WASH.steps.filter(isWait);
  expect(waits.length).toBeGreaterThan(3);
  for (const { id, waitFor } of waits) expect(waitFor, id).toBeLessThanOrEqual(10_000);
  const path = usualPath(PRACTICE_WASH).reduce((sum, { waitFor = 0 }) => sum + waitFor, 0);
  expect(path).toBeLessThan(30_000);
});

test("nothing perishable is in the vessel, so no time above 5 °C is counted", () => {
  expect(PRACTICE_WASH.perishableFrom).toBeUndefined();
});
