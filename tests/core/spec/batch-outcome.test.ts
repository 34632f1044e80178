import { expect, test } from "vitest";
import { volumeOf } from "../../../core/liquid/liquid.ts";
import { writtenAmounts } from "../../../core/spec/batch-amounts.ts";
import { outcomeOf } from "../../../core/spec/batch-outcome.ts";
import { trialAt } from "../../../core/spec/batch-trial.ts";
import { type HouseRules, NEW_HOUSE, RETENTION_PRIOR } from "../../../core/spec/house-rules.ts";
import type { Spec } from "../../../core/spec/spec.ts";
import { cupboardWith, must, PUNCH, unwashed } from "../../support/world/punch-spec.ts";

const trialOf = (spec: Spec, house: HouseRules = NEW_HOUSE) =>
  must(trialAt(spec, must(writtenAmounts(spec, cupboardWith(), "bar")), house, 40));

test("a plan's outcome says what the trial holds", () => {
  const trial = trialOf(PUNCH);
  const outcome = outcomeOf(PUNCH, trial, "Milk", NEW_HOUSE);
  // Milk weighs 1.03 kg a litre (dairy-table.ts); filters keep 20 ml each, common practice.
  const ml = trial.wash?.milk ?? 0;
  expect(outcome.milk).toEqual({ name: "Milk", dairy: "whole", ml, g: ml * 1.03 });
  expect(outcome.yield).toMatchObject({
    expected: trial.clearMl,
    curdKeeps: 0.35,
    filterKeeps: 20,
  });
  expect(outcome.yield?.poured).toBe(volumeOf(trial.mixed) + ml);
  expect(outcome.yield).not.toHaveProperty("drip");
  expect(outcome.finalMl).toBe(volumeOf(trial.final));
  expect(outcome.servedMl).toBeGreaterThan(PUNCH.serve.pour);
});

// By hand: a tenth of a litre of curd more or less per litre of milk, 0.25 to 0.45 round 0.35.
test("the range of the yield is what curd may keep more or less", () => {
  const trial = trialOf(PUNCH);
  const { expected = 0, low, high } = outcomeOf(PUNCH, trial, "Milk", NEW_HOUSE).yield ?? {};
  const tenth = 0.1 * (trial.wash?.milk ?? 0);
  expect(low).toBeCloseTo(expected - tenth, 6);
  expect(high).toBeCloseTo(expected + tenth, 6);
});

test("what a house has learnt of its drips goes into the plan", () => {
  const drip = { times: 1.4, low: 0.9, high: 2, batches: 5 };
  const house = { ...NEW_HOUSE, learnt: { own: { retention: RETENTION_PRIOR, drip } } };
  expect(outcomeOf(PUNCH, trialOf(PUNCH, house), "Milk", house).yield?.drip).toEqual(drip);
});

test("what is not washed has no milk, no yield and nothing washed", () => {
  const spec = unwashed();
  const { milk, washed, yield: yielded } = outcomeOf(spec, trialOf(spec), "", NEW_HOUSE);
  expect([milk, washed, yielded]).toEqual([undefined, undefined, undefined]);
});
