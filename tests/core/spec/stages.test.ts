import fc from "fast-check";
import { expect, test } from "vitest";
import { liquidOf } from "../../../core/liquid/compose.ts";
import { ETHANOL_DENSITY } from "../../../core/liquid/ethanol-water.ts";
import { NOTHING } from "../../../core/liquid/liquid.ts";
import type { Figure } from "../../../core/quantity/figure.ts";
import { NEW_HOUSE } from "../../../core/spec/house-rules.ts";
import { planBatch } from "../../../core/spec/plan-batch.ts";
import {
  balanceOf,
  milkFigure,
  type Stage,
  stagesOf,
  yieldFigure,
} from "../../../core/spec/stages.ts";
import { anySpec } from "../../support/world/any-spec.ts";
import { cupboardWith, PUNCH, planFor, unwashed } from "../../support/world/punch-spec.ts";

const plan = planFor(PUNCH, { by: "volume", volume: 5000 });

const figuresOf = ({ volume, strength, sugar, acid, brix, ratio }: Stage): readonly Figure[] =>
  ratio === undefined
    ? [volume, strength, sugar, acid, brix]
    : [volume, strength, sugar, acid, brix, ratio];

const input = (of: Figure | undefined, name: string): number => {
  const found = of?.from.find((one) => one.name === name);
  if (found === undefined) throw new RangeError(`${of?.name} must show its ${name}`);
  return found.value;
};

test("a washed batch has four stages, an unwashed one two", () => {
  expect(stagesOf(plan).map((stage) => stage.name)).toEqual([
    "mixed",
    "washed",
    "topped-up",
    "glass",
  ]);
  const bare = planFor(unwashed(), { by: "volume", volume: 5000 });
  expect(stagesOf(bare).map((stage) => stage.name)).toEqual(["mixed", "glass"]);
  expect([milkFigure(bare), yieldFigure(bare)]).toEqual([undefined, undefined]);
});

// By hand and by OIML R 22: a litre at 40 % holds 315.7 g of ethanol; 100 g of sugar are 100 g/L.
test("the balance of a litre says what is in it", () => {
  const litre = liquidOf({
    volume: 1000,
    strength: 0.4,
    sugarPerLitre: 100,
    acids: { citric: 5 },
    cation: 0,
    solidsPerLitre: 0,
  });
  const { volume, strength, sugar, acid, ratio } = balanceOf("mixed", litre);
  expect(volume.value).toBeCloseTo(1000, 6);
  expect(strength.value).toBeCloseTo(0.4, 9);
  expect(input(strength, "ethanol-mass")).toBeCloseTo(315.7, 1);
  expect(sugar.value).toBeCloseTo(100, 6);
  expect(acid.value).toBeCloseTo(5, 6);
  expect(ratio?.value).toBeCloseTo(20, 6);
});

test("without acid there is no ratio; of nothing there is nothing", () => {
  expect(balanceOf("mixed", { ...NOTHING, water: 100, sugar: 10 }).ratio).toBeUndefined();
  const { volume, strength, brix } = balanceOf("mixed", NOTHING);
  expect([volume.value, strength.value, brix.value]).toEqual([0, 0, 0]);
});

test("property: every figure shows its inputs, and its formula gives its value from them", () => {
  fc.assert(
    fc.property(anySpec, (spec) => {
      const result = planBatch(spec, cupboardWith(), { by: "volume", volume: 5000 }, NEW_HOUSE);
      if (!result.ok) return;
      for (const stage of stagesOf(result.value)) {
        const { volume, strength, sugar, acid, brix, ratio } = stage;
        const ml = volume.value;
        const near = (value: number, by: number) => expect(Math.abs(value - by)).toBeLessThan(1e-6);
        near(strength.value, (1000 * input(strength, "ethanol-mass")) / ETHANOL_DENSITY / ml);
        near(sugar.value, (1000 * input(sugar, "sugar-mass")) / input(sugar, "volume"));
        near(acid.value, (1000 * input(acid, "acid-mass")) / input(acid, "volume"));
        near(brix.value, (100 * input(brix, "sugar-mass")) / input(brix, "total-mass"));
        if (ratio) near(ratio.value, input(ratio, "sugar-mass") / input(ratio, "acid-mass"));
      }
    }),
    { numRuns: 40 },
  );
});

test("the milk is its ratio times the punch, the yield what curd and filters leave of the clear", () => {
  const milk = milkFigure(plan);
  expect(milk?.value).toBeCloseTo(input(milk, "milk-ratio") * input(milk, "volume"), 6);
  const yielded = yieldFigure(plan);
  const kept =
    input(yielded, "curd-keeps") * input(yielded, "milk") +
    input(yielded, "filters") * input(yielded, "filter-keeps");
  expect(yielded?.value).toBeCloseTo(input(yielded, "serum") - kept, 6);
  expect(yielded?.value).toBe(plan.yield?.expected);
  const serum = yielded?.from.find((one) => one.name === "serum");
  expect(serum?.from.map((one) => one.name)).toEqual(["volume", "milk"]);
  // 0.1 l of milk either way (0.25 to 0.45 about 0.35).
  expect(yielded?.within).toBeCloseTo(0.1 * (plan.milk?.ml ?? 0), 6);
});

test("a plan of an older version still shows its yield, without what it does not know", () => {
  if (plan.yield === undefined) throw new RangeError("the test plan is washed");
  const { curdKeeps: _, filterKeeps: __, ...older } = plan.yield;
  const names = yieldFigure({ ...plan, yield: older })?.from.map((one) => one.name);
  expect(names).toEqual(["serum", "milk", "filters"]);
});

test("every figure names its formula and its source; a strength says how sure it is", () => {
  const figures = [...stagesOf(plan).flatMap(figuresOf), milkFigure(plan), yieldFigure(plan)];
  const flat = figures.flatMap((one) => (one === undefined ? [] : [one, ...one.from]));
  expect(flat.length).toBeGreaterThan(60);
  for (const { name, value, rule } of flat) {
    expect(Number.isFinite(value), name).toBe(true);
    expect(rule.source, name).not.toBe("");
    expect(rule.key === "as-given" || rule.formula !== "", name).toBe(true);
  }
  const typed = flat.filter((one) => one.rule.key === "as-given").map((one) => one.name);
  expect(new Set(typed)).toEqual(new Set(["milk-ratio", "curd-keeps", "filters", "filter-keeps"]));
  for (const { strength } of stagesOf(plan)) expect(strength.within).toBeGreaterThan(0);
});
