import { expect, test } from "vitest";
import { ETHANOL_DENSITY } from "../../../core/liquid/ethanol-water.ts";
import {
  massOf,
  NOTHING,
  strengthOf,
  sugarPerLitre,
  volumeOf,
} from "../../../core/liquid/liquid.ts";
import { planSchema } from "../../../core/spec/plan.ts";
import type { BatchSize, Spec } from "../../../core/spec/spec.ts";
import {
  cupboardWith,
  fromCupboard,
  lineOf,
  PUNCH,
  planFor,
  unwashed,
} from "../../support/world/punch-spec.ts";

const LITRES_5: BatchSize = { by: "volume", volume: 5000 };

const close = (a: number, b: number, within = 1e-9): void =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(within * Math.max(1, Math.abs(a), Math.abs(b)));

// DAIRY.md (computed rules of thumb, from published compositions): 4 L + 1 L -> 4.57 L with one
// filter; ABV_out = ABV_p V_p / (V_p + 0.945 V_m), 25 % at 1:4 -> 20.2 %.
test("4 L of punch at 25 % on 1 L of milk: about 4.57 L at 20.2 %", () => {
  const punch = fromCupboard("vodka-40", { id: "punch-25", strength: 0.25 });
  const spec: Spec = {
    ...PUNCH,
    lines: [lineOf("punch-25", 100)],
    wash: { dairyId: "milk-whole", ratio: 0.25, order: "punch-into-milk", filters: 1 },
  };
  const plan = planFor(spec, { by: "vessel", vessel: 5000 }, cupboardWith(punch));
  expect(plan.milk?.ml).toBeCloseTo(1000, 6);
  expect(plan.milk?.g).toBeCloseTo(1030, 6);
  expect(Math.abs((plan.yield?.expected ?? 0) - 4570)).toBeLessThan(15);
  expect(Math.abs(strengthOf(plan.washed ?? NOTHING) - 0.202)).toBeLessThan(0.001);
});

// OIML R 22 (1975), evaluated in the reference notes: 50 + 50 ml of ethanol and water make 96.463 ml
// at 51.83 %; 40 % vol is 33.300 % by mass.
test("ethanol and water in equal volumes shrink to 96.463 %", () => {
  const pure = fromCupboard("neutral-96", { id: "pure", strength: 1 });
  const spec = unwashed({ ...PUNCH, lines: [lineOf("pure", 50), lineOf("water", 50)] });
  const plan = planFor(spec, { by: "volume", volume: 964.63 }, cupboardWith(pure));
  for (const line of plan.lines) expect(line.before.ml).toBeCloseTo(500, 2);
  expect(strengthOf(plan.final)).toBeCloseTo(0.5183, 4);
  const spirit = planFor(unwashed({ ...PUNCH, lines: [lineOf("vodka-40", 50)] }), LITRES_5);
  expect(spirit.final.ethanol / massOf(spirit.final)).toBeCloseTo(0.333, 5);
});

// By hand: 50 °Bx is 614.8 g/L (ICUMSA SPS-4); 300 ml of it in a litre are 184.4 g, half as much in 2 L.
test("sugar by hand: 30 parts of syrup 1:1 in 100 parts of drink", () => {
  const spec = unwashed({ ...PUNCH, lines: [lineOf("syrup-1-1", 30), lineOf("water", 70)] });
  const plan = planFor(spec, LITRES_5);
  // The mixture is 0.2 ml per litre short of the sum (ICUMSA SPS-4 at 50 and 17 °Bx).
  expect(Math.abs(sugarPerLitre(plan.final) - 184.4)).toBeLessThan(0.3);
  expect(plan.lines[0]?.before.g).toBeCloseTo(0.3 * 5000 * 1.2297, -1);
});

test("a washed plan says everything a run will need", () => {
  const plan = planFor(PUNCH, LITRES_5);
  expect(plan).toMatchObject({ v: 1, spec: PUNCH, size: LITRES_5, ounce: "bar" });
  expect(plan.ingredients.map((one) => one.id)).toEqual([
    ...PUNCH.lines.map((line) => line.ingredientId),
    "milk-whole",
  ]);
  expect(plan.lines.map((line) => line.name)).toEqual([
    "Brandy 40 %",
    "Lemon juice, fresh",
    "Black tea, strong, cooled",
    "Sugar syrup 1:1 by weight",
  ]);
  expect(plan.yield).toMatchObject({ from: "common-practice", batches: 0, curdKeeps: 0.35 });
  expect(plan.heldBackMl).toBeCloseTo(10 * plan.scale, 9);
  expect(planSchema.parse(plan)).toEqual(plan);
});

test("an unwashed plan has no milk and holds nothing back, whatever its lines and its rule say", () => {
  for (const rule of [{ rule: "proportion" }, { rule: "strength", target: 0.3 }] as const) {
    const plan = planFor({ ...unwashed(), topUp: rule }, LITRES_5);
    expect([plan.milk, plan.yield, plan.washed]).toEqual([undefined, undefined, undefined]);
    expect(plan.heldBackMl).toBe(0);
    expect(plan.lines.every((line) => line.after.g === 0 && line.before.g > 0)).toBe(true);
    expect(plan.final).toEqual(plan.mixed);
  }
});

test("held-back sugar alone is not lost, though it has no volume to measure", () => {
  const spec = {
    ...PUNCH,
    lines: [lineOf("brandy-40", 40), lineOf("water", 50), lineOf("white-sugar", 20, "g", 0.5)],
  };
  const plan = planFor(spec, LITRES_5);
  expect(plan.heldBack.sugar).toBeCloseTo(10 * plan.scale, 9);
  expect(plan.lines[2]?.after.g).toBeCloseTo(10 * plan.scale, 9);
});

test("an ingredient used twice is listed once", () => {
  const spec = {
    ...PUNCH,
    lines: [lineOf("brandy-40", 40), { ...lineOf("brandy-40", 5), id: "x" }],
  };
  expect(planFor(spec, LITRES_5).ingredients.map((one) => one.id)).toEqual([
    "brandy-40",
    "milk-whole",
  ]);
});

test("a vat of a cubic metre is met as closely as a bottle, filters and all", () => {
  for (const volume of [700, 1_000_000]) {
    close(planFor(PUNCH, { by: "volume", volume }).finalMl, volume, 1e-8);
  }
});

// By hand: a target strength is a mass balance; the ethanol in the bottle over its volume.
test("a target strength is reached in the bottle, whatever is held back", () => {
  const held = [lineOf("gin-43", 30, "ml", 0.3), lineOf("dry-vermouth-18", 20, "ml", 0.5)];
  const lines = [...held, ...PUNCH.lines.slice(1), lineOf("citric-acid", 0.5, "g", 0.5)];
  for (const target of [0.14, 0.17, 0.2]) {
    const plan = planFor({ ...PUNCH, lines, topUp: { rule: "strength", target } }, LITRES_5);
    const { ethanol } = plan.final;
    expect((1000 * ethanol) / ETHANOL_DENSITY / volumeOf(plan.final)).toBeCloseTo(target, 9);
  }
});

test("a line pours after the wash what the target takes, not what was written", () => {
  const at = (target: number) =>
    planFor({ ...PUNCH, topUp: { rule: "strength", target } }, LITRES_5);
  for (const plan of [at(0.15), at(0.17)]) {
    const after = plan.lines.reduce((sum, line) => sum + line.after.ml, 0);
    close(after, plan.heldBackMl);
    // Written: a quarter of 40 ml.
    expect(Math.abs(after / plan.scale - 10)).toBeGreaterThan(0.5);
  }
});
