import { expect, test } from "vitest";
import { strengthOf, volumeOf } from "../../../core/liquid/liquid.ts";
import { actualFinal } from "../../../core/run/actual.ts";
import { planOf, TestBench } from "../../support/world/run-events.ts";
import { finishOpenStep, USUAL, type WashAnswers } from "../../support/world/wash-walk.ts";

const plan = planOf();
const milk = plan.milk?.ml ?? 0;

/** What is in the bottle after so many steps. */
function bottled(steps: number, by: Partial<WashAnswers>) {
  const bench = new TestBench();
  bench.start(plan);
  for (let turn = 0; turn < steps; turn += 1) {
    const order = bench.run && finishOpenStep(bench.run, { ...USUAL, milk, ...by });
    if (order !== undefined) expect(bench.order(order)).toBeUndefined();
  }
  if (bench.run === undefined) throw new RangeError("the bench must have a run");
  return actualFinal(bench.run);
}

test("as long as nothing is measured it is the plan's", () => {
  const actual = bottled(3, {});
  expect(volumeOf(actual)).toBeCloseTo(plan.finalMl, 6);
  expect(strengthOf(actual)).toBeCloseTo(strengthOf(plan.final), 9);
});

// By hand: 4000 ml through and 300 ml of brandy at 40 % on it.
test("measured, it is what came through with what was poured into it", () => {
  const clear = strengthOf(plan.washed ?? plan.mixed);
  const actual = bottled(13, { yield: 4000, topUp: 300 });
  const byHand = (4000 * clear + 300 * 0.4) / 4300;
  expect(Math.abs(strengthOf(actual) - byHand)).toBeLessThan(0.001);
  expect(Math.abs(volumeOf(actual) - 4300)).toBeLessThan(15);
});

test("no spirit poured is no spirit in it", () => {
  const actual = bottled(13, { yield: 4000, topUp: 0 });
  expect(strengthOf(actual)).toBeCloseTo(strengthOf(plan.washed ?? plan.mixed), 9);
  expect(volumeOf(actual)).toBeCloseTo(4000, 6);
});
