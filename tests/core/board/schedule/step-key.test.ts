import { expect, test } from "vitest";
import { byStep, stepKey } from "../../../../core/board/schedule/step-key.ts";
import { at } from "./small-days.ts";

const place = (job: string, step: string, from: number, to: number) => ({
  job,
  step,
  startAt: at(from),
  endAt: at(to),
});

test("no two steps share a key, whatever they are called", () => {
  expect(stepKey("a", "b/c")).not.toBe(stepKey("a/b", "c"));
  const [one, two] = [place("a", "x", 0, 1), place("b", "x", 2, 3)];
  const known = byStep([one, two]);
  expect([known.get(stepKey("a", "x")), known.get(stepKey("b", "x"))]).toEqual([one, two]);
});
