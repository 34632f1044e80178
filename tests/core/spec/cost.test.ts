import fc from "fast-check";
import { expect, test } from "vitest";
import { costOf } from "../../../core/spec/cost.ts";
import type { Spec } from "../../../core/spec/spec.ts";
import {
  cupboardWith,
  fromCupboard,
  lineOf,
  PUNCH,
  planFor,
  unwashed,
} from "../../support/world/punch-spec.ts";

const paid = (id: string, money: number, pack: number) =>
  fromCupboard(id, { price: { paid: money, pack } });
const PRICED = cupboardWith(
  paid("brandy-40", 21, 700),
  paid("lemon-juice", 6, 1000),
  paid("black-tea", 0, 1000),
  paid("syrup-1-1", 2, 1000),
  paid("milk-whole", 1.2, 1000),
  paid("white-sugar", 2, 1000),
);
const stocked = {
  by: "stock",
  ingredientId: "brandy-40",
  amount: { value: 400, unit: "ml" },
} as const;

// By hand, ten drinks as written: brandy 400 ml at 0.03, lemon 200 at 0.006, tea free, syrup 200 at
// 0.002, sugar 50 g at 0.002: 12 + 1.2 + 0 + 0.4 + 0.1 = 13.70.
test("a batch that is not washed, by hand", () => {
  const spec = unwashed({ ...PUNCH, lines: [...PUNCH.lines, lineOf("white-sugar", 5, "g")] });
  const plan = planFor(spec, stocked, PRICED);
  const cost = costOf(plan);
  expect(cost.batch.value).toBeCloseTo(13.7, 6);
  expect(cost.priced.map(({ cost: one }) => Math.round(one * 100) / 100)).toEqual([
    12, 1.2, 0.4, 0.1, 0,
  ]);
  expect(cost.serve.value).toBeCloseTo((13.7 * 90) / plan.finalMl, 9);
  expect(cost.unpriced).toEqual([]);
  expect(cost.pour).toBeUndefined();
});

test("a washed batch pays for its milk and for what curd and filters keep", () => {
  const plan = planFor(PUNCH, stocked, PRICED);
  const milk = ((plan.milk?.ml ?? 0) * 1.2) / 1000;
  const cost = costOf(plan);
  expect(cost.batch.value).toBeCloseTo(13.6 + milk, 6);
  const serves = plan.finalMl / 90;
  expect(cost.serve.value * serves).toBeCloseTo(cost.batch.value, 9);
  // Less came through than planned: each serve carries more.
  const short = costOf(plan, plan.finalMl * 0.8);
  expect(short.serve.value / cost.serve.value).toBeCloseTo(1.25, 9);
});

test("the share of the menu price", () => {
  const spec: Spec = { ...PUNCH, serve: { ...PUNCH.serve, price: 12 } };
  const cost = costOf(planFor(spec, stocked, PRICED));
  expect(cost.pour?.value).toBeCloseTo(cost.serve.value / 12, 12);
  expect(cost.pour?.unit).toBe("share");
});

test("what has no price is named, never counted as free", () => {
  const cost = costOf(planFor(PUNCH, stocked, cupboardWith(paid("brandy-40", 21, 700))));
  expect(cost.unpriced).toEqual([
    "Lemon juice, fresh",
    "Black tea, strong, cooled",
    "Sugar syrup 1:1 by weight",
    "Whole milk, pasteurised",
  ]);
  expect(cost.priced.map(({ id }) => id)).toEqual(["brandy-40"]);
  expect(cost.batch.value).toBeCloseTo(12, 6);
  const lost = planFor(PUNCH, stocked, PRICED);
  expect(costOf({ ...lost, ingredients: [] }).unpriced).toHaveLength(5);
});

test("every figure opens to what it came from", () => {
  const { batch, serve } = costOf(planFor(PUNCH, stocked, PRICED));
  expect(batch.from.map(({ name }) => name)).toContain("Brandy 40 %");
  expect(batch.from.reduce((sum, one) => sum + one.value, 0)).toBeCloseTo(batch.value, 9);
  expect(serve.from.map(({ name }) => name)).toEqual(["batch-cost", "bottled", "serve-pour"]);
});

test("twice the batch costs twice as much, and a dearer bottle never less", () => {
  const money = fc.double({ min: 0, max: 500, noNaN: true });
  fc.assert(
    fc.property(fc.double({ min: 100, max: 5000, noNaN: true }), money, money, (ml, a, b) => {
      const at = (value: number, price: number) => {
        const shelf = new Map(PRICED).set("brandy-40", paid("brandy-40", price, 700));
        const amount = { value, unit: "ml" as const };
        const spec = unwashed();
        return costOf(planFor(spec, { by: "stock", ingredientId: "brandy-40", amount }, shelf));
      };
      const once = at(ml, a);
      const twice = at(2 * ml, a);
      expect(twice.batch.value).toBeCloseTo(2 * once.batch.value, 4);
      expect(twice.serve.value).toBeCloseTo(once.serve.value, 6);
      expect(at(ml, Math.max(a, b)).batch.value).toBeGreaterThanOrEqual(once.batch.value - 1e-6);
    }),
    { numRuns: 30 },
  );
});

test("nothing bottled has no cost per serve", () => {
  expect(() => costOf(planFor(PUNCH, stocked, PRICED), 0)).toThrow(/must be bottled/);
});
