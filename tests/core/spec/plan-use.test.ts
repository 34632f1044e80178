import { expect, test } from "vitest";
import { usesOf } from "../../../core/spec/plan-use.ts";
import { lineOf, PUNCH, planFor, unwashed } from "../../support/world/punch-spec.ts";

test("lines of one ingredient add up, before and after the wash, and the milk comes last", () => {
  const spec = { ...PUNCH, lines: [...PUNCH.lines, lineOf("brandy-40", 10)] };
  const plan = planFor(spec, { by: "volume", volume: 5000 });
  const uses = usesOf(plan);
  expect(uses.map(({ id }) => id)).toEqual([
    "brandy-40",
    "lemon-juice",
    "black-tea",
    "syrup-1-1",
    "milk-whole",
  ]);
  expect(uses[0]?.ml).toBeCloseTo(50 * plan.scale, 6);
  expect(uses.at(-1)).toMatchObject({ ml: plan.milk?.ml, g: plan.milk?.g, weighed: false });
  expect(uses.every(({ ingredient }) => ingredient !== undefined)).toBe(true);
});

test("milk that is also poured is one use", () => {
  const spec = { ...PUNCH, lines: [...PUNCH.lines, lineOf("milk-whole", 5)] };
  const plan = planFor(spec, { by: "volume", volume: 5000 });
  const milk = usesOf(plan).filter(({ id }) => id === "milk-whole");
  expect(milk).toHaveLength(1);
  expect(milk[0]?.ml).toBeCloseTo(5 * plan.scale + (plan.milk?.ml ?? 0), 6);
});

test("what is not washed uses no milk; what is weighed counts in grams", () => {
  const spec = unwashed({ ...PUNCH, lines: [...PUNCH.lines, lineOf("white-sugar", 5, "g")] });
  const plan = planFor(spec, { by: "volume", volume: 5000 });
  const uses = usesOf(plan);
  expect(uses.some(({ id }) => id === "milk-whole")).toBe(false);
  expect(uses.at(-1)).toMatchObject({ id: "white-sugar", weighed: true, ml: 0 });
  expect(uses.at(-1)?.g).toBeCloseTo(5 * plan.scale, 6);
});

test("a plan that came without an ingredient still says how much of it", () => {
  const plan = planFor(PUNCH, { by: "volume", volume: 5000 });
  const [first] = usesOf({ ...plan, ingredients: [] });
  expect(first).toMatchObject({ id: "brandy-40", name: "Brandy 40 %" });
  expect(first && "ingredient" in first).toBe(false);
});
