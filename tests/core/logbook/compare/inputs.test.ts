import { expect, test } from "vitest";
import { sideOf } from "../../../../core/logbook/compare/inputs.ts";
import { recordOf } from "../../../../core/logbook/record.ts";
import { keptRecord, PEAR_PLAN } from "../../../support/world/learnt-batches.ts";
import { demoSpec, planned, started } from "../../../support/world/play-run.ts";

const MINUTE = 60_000;

test("what went into a batch and what came of it, as figures", () => {
  const { inputs, choices, results } = sideOf(keptRecord(1, 0.4));
  const punch = PEAR_PLAN.lines.reduce((sum, { before }) => sum + before.ml, 0);
  expect(inputs["milk-ratio"]).toBeCloseTo((PEAR_PLAN.milk?.ml ?? 0) / punch, 12);
  expect(inputs).toMatchObject({
    filters: 2,
    "rest-time": 60 * MINUTE,
    "pour-time": 5 * MINUTE,
  });
  expect(choices).toEqual({ order: "punch-into-milk", shape: "unknown", dairy: "whole" });
  expect(results).toMatchObject({ passes: 1, "drip-time": 340 * MINUTE });
  expect(results["curd-kept"]).toBeCloseTo(0.4, 9);
});

test("what nobody noted is left out; a verdict counts by its place", () => {
  const record = keptRecord(1, 0.4);
  expect(sideOf(record).inputs).not.toHaveProperty("degrees-drip");
  expect(sideOf(record).results).not.toHaveProperty("verdict");
  expect(sideOf({ ...record, verdict: "good" }).results.verdict).toBe(2);
  expect(sideOf({ ...record, verdict: "poor" }).results.verdict).toBe(0);
  const made = { ...record.made, degrees: { pour: 12, drip: 4 } };
  expect(sideOf({ ...record, made }).inputs).toMatchObject({
    "degrees-curdle": 12,
    "degrees-drip": 4,
  });
});

test("a batch that is not washed has the inputs of its punch alone", () => {
  const plan = planned(demoSpec("Smoked Barley"), { by: "volume", volume: 2000 });
  const side = sideOf(recordOf(started("infusion", "SB-1", 0, plan).run));
  expect(Object.keys(side.inputs)).toEqual(["punch-strength", "punch-sugar", "punch-acid"]);
  expect(side.choices).toEqual({});
});
