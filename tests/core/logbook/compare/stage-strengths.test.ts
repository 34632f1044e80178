import { expect, test } from "vitest";
import { strengthOf } from "../../../../core/liquid/liquid.ts";
import { stageStrengthsOf } from "../../../../core/logbook/compare/stage-strengths.ts";
import { PEAR_PLAN } from "../../../support/world/learnt-batches.ts";
import { demoSpec, dripped, madeWhole, planned, started } from "../../../support/world/play-run.ts";

const begun = () => started("run-1", "PB-1", 0, PEAR_PLAN);

test("a batch that went by plan came out as planned at every stage", () => {
  const { run } = madeWhole(begun(), {
    yield: PEAR_PLAN.yield?.expected ?? 0,
    topUp: PEAR_PLAN.heldBackMl,
    useBy: 1e9,
  });
  const stages = stageStrengthsOf(run);
  expect(stages.map(({ stage }) => stage)).toEqual(["mixed", "washed", "topped-up", "glass"]);
  for (const { stage, planned: plan, actual } of stages) {
    if (stage === "mixed") expect(actual).toBeUndefined();
    else expect(actual).toBeCloseTo(plan, 6);
  }
  expect(stages[2]?.planned).toBe(strengthOf(PEAR_PLAN.final));
});

test("more top-up than planned comes out stronger, in the bottle and in the glass", () => {
  const { run } = madeWhole(begun(), {
    yield: PEAR_PLAN.yield?.expected ?? 0,
    topUp: 1.5 * PEAR_PLAN.heldBackMl,
    useBy: 1e9,
  });
  const [, washed, bottled, glass] = stageStrengthsOf(run);
  expect(washed?.actual).toBeCloseTo(washed?.planned ?? 0, 6);
  expect(bottled?.actual).toBeGreaterThan(bottled?.planned ?? 1);
  expect(glass?.actual).toBeGreaterThan(glass?.planned ?? 1);
});

test("a batch of which nothing came through has no strength, and can still be looked at", () => {
  const { run } = madeWhole(begun(), { yield: 0, topUp: 0, useBy: 1e9 });
  const [, washed, bottled, glass] = stageStrengthsOf(run);
  expect([washed?.actual, bottled?.actual]).toEqual([0, 0]);
  expect(glass).toMatchObject({ stage: "glass", planned: strengthOf(PEAR_PLAN.served) });
  expect(glass?.actual).toBeUndefined();
});

test("what was not measured did not come out as anything", () => {
  for (const { actual } of stageStrengthsOf(dripped(begun()).run)) expect(actual).toBeUndefined();
});

test("an unwashed batch is mixed and served", () => {
  const plan = planned(demoSpec("Harbour Slush"));
  const { run } = started("run-2", "HS-1", 0, plan);
  expect(stageStrengthsOf(run).map(({ stage }) => stage)).toEqual(["mixed", "glass"]);
});
