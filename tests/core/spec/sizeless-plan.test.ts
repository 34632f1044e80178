import { expect, test } from "vitest";
import { strengthOf } from "../../../core/liquid/liquid.ts";
import { NEW_HOUSE } from "../../../core/spec/house-rules.ts";
import { planBatch } from "../../../core/spec/plan-batch.ts";
import { sizelessPlan } from "../../../core/spec/sizeless-plan.ts";
import { cupboardWith, must, PUNCH } from "../../support/world/punch-spec.ts";

const cupboard = cupboardWith();

test("what is in the bottle hardly differs from a batch ten times as large", () => {
  const plan = must(sizelessPlan(PUNCH, cupboard, "bar"));
  const size = { by: "serves", serves: 1000 } as const;
  const large = must(planBatch(PUNCH, cupboard, size, NEW_HOUSE));
  expect(Math.abs(strengthOf(plan.final) - strengthOf(large.final))).toBeLessThan(0.0005);
});

test("it pours the house's ounce, and says why there is no plan", () => {
  expect(must(sizelessPlan(PUNCH, cupboard, "exact")).ounce).toBe("exact");
  const empty = sizelessPlan({ ...PUNCH, lines: [] }, cupboard, "bar");
  expect(empty).toMatchObject({ ok: false, refusal: "spec-without-lines" });
});
