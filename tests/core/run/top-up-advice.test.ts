import fc from "fast-check";
import { expect, test } from "vitest";
import { massOf, strengthOf, volumeOf } from "../../../core/liquid/liquid.ts";
import { mix } from "../../../core/liquid/mixing.ts";
import type { Run } from "../../../core/run/run.ts";
import { clearSoFar, heldBackOf, topUpAdvice } from "../../../core/run/top-up-advice.ts";
import type { Plan } from "../../../core/spec/plan.ts";
import type { Spec } from "../../../core/spec/spec.ts";
import { unwashed } from "../../support/world/punch-spec.ts";
import { planOf, TestBench, WASHED_SPEC } from "../../support/world/run-events.ts";
import { finishOpenStep, USUAL } from "../../support/world/wash-walk.ts";

/** A run whose milk, and where given yield, are measured. ml */
function measured(plan: Plan, yieldMl?: number, milk = plan.milk?.ml ?? 0): Run {
  const bench = new TestBench();
  bench.start(plan);
  for (let turn = 0; turn < (yieldMl === undefined ? 2 : 10); turn += 1) {
    const by = { ...USUAL, milk, cloudy: 100, yield: yieldMl ?? 0 };
    const order = bench.run && finishOpenStep(bench.run, by);
    if (order !== undefined) expect(bench.order(order)).toBeUndefined();
  }
  if (bench.run === undefined) throw new RangeError("the bench must have a run");
  return bench.run;
}

const with_ = (topUp: Spec["topUp"]): Plan => planOf({ ...WASHED_SPEC, topUp });
const proportion = with_({ rule: "proportion" });
const expected = proportion.yield?.expected ?? 0;

test("before anything is measured the advice is the plan", () => {
  const advice = topUpAdvice(measured(proportion));
  expect(advice).toMatchObject({
    planned: proportion.heldBackMl,
    yieldShare: 1,
    beyondHeldBack: 0,
  });
  expect(advice.advised).toBeCloseTo(proportion.heldBackMl, 9);
  expect(advice.strength).toBeCloseTo(strengthOf(proportion.final), 9);
});

// By hand: nine tenths of the yield take nine tenths of the spirit, to the same strength.
test.each([0.9, 1, 1.05])("%s of the expected yield takes as much of the spirit", (share) => {
  const advice = topUpAdvice(measured(proportion, expected * share));
  expect(advice.yieldShare).toBeCloseTo(share, 9);
  expect(advice.advised).toBeCloseTo(proportion.heldBackMl * share, 6);
  expect(advice.beyondHeldBack).toBeCloseTo(proportion.heldBackMl * Math.max(0, share - 1), 6);
  expect(advice.strength).toBeCloseTo(strengthOf(proportion.final), 9);
});

test.each([0.9, 1.05])(
  "fixed: %s of the yield takes the planned spirit, to another strength",
  (share) => {
    const plan = with_({ rule: "fixed" });
    const advice = topUpAdvice(measured(plan, expected * share));
    expect([advice.advised, advice.beyondHeldBack]).toEqual([plan.heldBackMl, 0]);
    expect(Math.sign(advice.strength - strengthOf(plan.final))).toBe(Math.sign(1 - share));
  },
);

test.each([0.8, 1, 1.05])("strength: %s of the yield still comes to the target", (share) => {
  const plan = with_({ rule: "strength", target: 0.15 });
  const advice = topUpAdvice(measured(plan, (plan.yield?.expected ?? 0) * share));
  expect(advice.strength).toBeCloseTo(0.15, 9);
  expect(advice.advised).toBeCloseTo(plan.heldBackMl * share, 4);
});

test("strength: less milk than planned makes a stronger clear, and takes less spirit", () => {
  const plan = with_({ rule: "strength", target: 0.15 });
  const milk = plan.milk?.ml ?? 0;
  const [short, full] = [measured(plan, 4000, milk * 0.9), measured(plan, 4000, milk)].map(
    topUpAdvice,
  );
  expect(short?.advised).toBeLessThan(full?.advised ?? 0);
  expect(short?.strength).toBeCloseTo(0.15, 9);
});

test("already stronger than the target: no spirit, and why", () => {
  const target = strengthOf(proportion.washed ?? proportion.final) + 0.002;
  const plan = with_({ rule: "strength", target });
  const run = measured(plan, 3000, 100);
  expect(topUpAdvice(run)).toMatchObject({
    advised: 0,
    refusal: "target-below-base",
    beyondHeldBack: 0,
  });
  expect(topUpAdvice(run).strength).toBe(strengthOf(clearSoFar(run)));
});

test("too weak a spirit: the planned amount, and why", () => {
  const plan: Plan = {
    ...proportion,
    spec: { ...WASHED_SPEC, topUp: { rule: "strength", target: 0.6 } },
  };
  const advice = topUpAdvice(measured(plan, 4000));
  expect(advice).toMatchObject({ advised: plan.heldBackMl, refusal: "target-above-spirit" });
});

test("what came through is made of what was really poured in", () => {
  const plan = proportion;
  expect(clearSoFar(measured(plan))).toEqual(plan.washed);
  const clear = clearSoFar(measured(plan, 4000));
  expect(volumeOf(clear)).toBeCloseTo(4000, 6);
  expect(strengthOf(clear)).toBeCloseTo(strengthOf(plan.washed ?? clear), 9);
  expect(massOf(clearSoFar(measured(plan, 0)))).toBe(0);
});

test("a batch that is not washed is its punch, and takes no spirit", () => {
  const plan = planOf(unwashed());
  const run = measured(plan);
  expect(clearSoFar(run)).toEqual(plan.mixed);
  expect(topUpAdvice(run)).toMatchObject({
    planned: 0,
    advised: 0,
    strength: strengthOf(plan.mixed),
  });
});

test("held-back sugar alone has no measure: it goes in as it was set aside", () => {
  const dry = {
    id: "dry",
    ingredientId: "white-sugar",
    amount: { value: 5, unit: "g" },
    heldBack: 1,
  } as const;
  const lines = [...WASHED_SPEC.lines.map((line) => ({ ...line, heldBack: 0 })), dry];
  const plan = planOf({ ...WASHED_SPEC, lines });
  expect(plan.heldBackMl).toBe(0);
  expect(heldBackOf(measured(plan), 0)).toEqual(plan.heldBack);
  expect(plan.heldBack.sugar).toBeGreaterThan(0);
  expect(massOf(heldBackOf(measured(proportion), 0))).toBe(0);
});

test("property: the strength said is the strength of what would be in the bottle", () => {
  const rule = fc.constantFrom<Spec["topUp"]>(
    { rule: "proportion" },
    { rule: "fixed" },
    { rule: "strength", target: 0.15 },
  );
  const through = fc.double({ min: 100, max: 4200, noNaN: true });
  fc.assert(
    fc.property(
      rule,
      through,
      fc.double({ min: 500, max: 1200, noNaN: true }),
      (topUp, ml, milk) => {
        const run = measured(with_(topUp), ml, milk);
        const { advised, strength, beyondHeldBack, planned } = topUpAdvice(run);
        expect(strength).toBe(strengthOf(mix([clearSoFar(run), heldBackOf(run, advised)])));
        expect(beyondHeldBack).toBe(Math.max(0, advised - planned));
      },
    ),
    { numRuns: 25 },
  );
});
