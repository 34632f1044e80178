import { expect, test } from "vitest";
import { CUPBOARD } from "../../../core/spec/cupboard-table.ts";
import { curdShare, retentionOf } from "../../../core/spec/curd-retention.ts";
import { NEW_HOUSE, RETENTION_PRIOR } from "../../../core/spec/house-rules.ts";
import { planBatch } from "../../../core/spec/plan-batch.ts";
import { WASHED_SPEC } from "../../support/world/run-events.ts";

// Whole milk keeps 0.25 to 0.45 l/l: mass balance of printed recipes, an estimate. Others: judgement.
test("whole milk keeps what practice says", () => {
  expect(curdShare("whole")).toBe(1);
  expect(retentionOf(RETENTION_PRIOR, "whole")).toEqual(RETENTION_PRIOR);
});

// USDA Handbook 8: protein 3.4 % of skim, 2.1 % of cream against 3.3 % of whole milk.
test.each([
  ["skim", 3.4 / 3.3],
  ["cream", 2.1 / 3.3],
] as const)("%s keeps in proportion to its protein", (dairy, share) => {
  expect(curdShare(dairy)).toBeCloseTo(share, 1);
});

test("what does not curdle keeps little; soy, which does, as much as milk", () => {
  for (const dairy of ["oat", "almond", "coconut"] as const) expect(curdShare(dairy)).toBe(0.3);
  expect(curdShare("soy")).toBe(1);
});

test("the interval goes with the mean, and where it comes from stays", () => {
  const cream = retentionOf(RETENTION_PRIOR, "cream");
  expect(cream.low / cream.mean).toBeCloseTo(RETENTION_PRIOR.low / RETENTION_PRIOR.mean, 9);
  expect(cream.high / cream.mean).toBeCloseTo(RETENTION_PRIOR.high / RETENTION_PRIOR.mean, 9);
  expect(cream.from).toBe("common-practice");
});

test("a plan uses it: oat milk loses less of its volume than whole milk", () => {
  const cupboard = new Map(CUPBOARD.map((one) => [one.id, one]));
  const keeps = (dairyId: string) => {
    const spec = { ...WASHED_SPEC };
    const wash = WASHED_SPEC.wash && { ...WASHED_SPEC.wash, dairyId };
    const washed = wash === undefined ? spec : { ...spec, wash };
    const planned = planBatch(washed, cupboard, { by: "volume", volume: 5000 }, NEW_HOUSE);
    if (!planned.ok) throw new RangeError(`must plan, got ${planned.refusal}`);
    return planned.value.yield?.curdKeeps;
  };
  expect(keeps("milk-whole")).toBeCloseTo(0.35, 9);
  expect(keeps("oat-milk")).toBeCloseTo(0.35 * 0.3, 9);
});
