import { expect, test } from "vitest";
import { massOf, volumeOf } from "../../../core/liquid/liquid.ts";
import { mix } from "../../../core/liquid/mixing.ts";
import { planPours, poured } from "../../../core/spec/plan-pours.ts";
import {
  cupboardWith,
  dryOf,
  fromCupboard,
  lineOf,
  PUNCH,
  planFor,
} from "../../support/world/punch-spec.ts";

const plan = planFor(PUNCH, { by: "volume", volume: 5000 });

test("the lines of a plan mix to the plan's own punch and held-back spirit", () => {
  const pours = planPours(plan);
  const vessel = mix(pours.map((pour) => poured(pour, pour.line.before).liquid));
  expect(volumeOf(vessel)).toBeCloseTo(volumeOf(plan.mixed), 4);
  expect(vessel.ethanol).toBeCloseTo(plan.mixed.ethanol, 5);
  expect(vessel.acids.citric).toBeCloseTo(plan.mixed.acids.citric ?? 0, 6);
  const kept = mix(pours.map((pour) => poured(pour, pour.line.after).liquid));
  expect(kept.ethanol).toBeCloseTo(plan.heldBack.ethanol, 5);
});

test("a gram weighs a gram, of liquids and of what dissolves, whatever density was measured", () => {
  const heavy = fromCupboard("brandy-40", { density: 952 });
  const spec = { ...PUNCH, lines: [...PUNCH.lines, lineOf("white-sugar", 5, "g")] };
  const own = planFor(spec, { by: "volume", volume: 5000 }, cupboardWith(heavy));
  for (const { perGram } of planPours(own)) expect(massOf(perGram)).toBeCloseTo(1, 9);
});

test("a plan without its own ingredient, or with an impossible one, is a fault of ours", () => {
  expect(() => planPours({ ...plan, ingredients: [] })).toThrow(/must hold its own ingredients/);
  const impossible = plan.ingredients.map((one) => ({
    ...one,
    sweetness: { as: "g/L", value: 1200 } as const,
    strength: 0.9,
  }));
  expect(() => planPours({ ...plan, ingredients: impossible })).toThrow(/must mix/);
});

test("leaves give nothing of themselves", () => {
  const leaf = dryOf("leaf", { absorbs: 3 });
  const spec = { ...PUNCH, lines: [...PUNCH.lines, lineOf("leaf", 1, "g")] };
  const own = planFor(spec, { by: "volume", volume: 5000 }, cupboardWith(leaf));
  const pour = planPours(own).find(({ ingredient }) => ingredient.id === "leaf");
  expect(pour && massOf(pour.perGram)).toBe(0);
});
