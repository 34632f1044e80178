import { expect, test } from "vitest";
import { sideOf } from "../../../../core/logbook/compare/inputs.ts";
import { plannedSide } from "../../../../core/logbook/compare/planned-side.ts";
import { usualDrip } from "../../../../core/method/drip/usual-drip.ts";
import { keptRecord, PEAR_PLAN } from "../../../support/world/learnt-batches.ts";
import { demoSpec, planned } from "../../../support/world/play-run.ts";

test("a plan stands beside its batch with the same figures where it went by plan", () => {
  const batch = sideOf(keptRecord(1, PEAR_PLAN.yield?.curdKeeps ?? 0));
  const plan = plannedSide(PEAR_PLAN);
  for (const name of ["milk-ratio", "punch-strength", "punch-acid", "filters"] as const) {
    expect(plan.inputs[name]).toBeCloseTo(batch.inputs[name] ?? Number.NaN, 9);
  }
  expect(plan.choices).toEqual(batch.choices);
  expect(plan.results["yield-share"]).toBeCloseTo(batch.results["yield-share"] ?? 0, 9);
  expect(plan.results["curd-kept"]).toBeCloseTo(batch.results["curd-kept"] ?? 0, 9);
});

test("a drip time is planned only where the house has learnt one", () => {
  expect(plannedSide(PEAR_PLAN).results).not.toHaveProperty("drip-time");
  const drip = { times: 1.5, low: 1, high: 2, batches: 7 };
  const { yield: expected } = PEAR_PLAN;
  if (expected === undefined) throw new RangeError("Pear Beacon is washed");
  const learnt = plannedSide({ ...PEAR_PLAN, yield: { ...expected, drip } });
  expect(learnt.results["drip-time"]).toBeCloseTo(1.5 * usualDrip(expected.expected, 2), 6);
});

test("an infusion's plan has its punch alone", () => {
  const plan = planned(demoSpec("Smoked Barley"), { by: "volume", volume: 2000 });
  expect(plannedSide(plan)).toMatchObject({ choices: {}, results: {} });
});
