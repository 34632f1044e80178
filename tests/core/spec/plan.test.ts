import { expect, test } from "vitest";
import {
  planLineSchema,
  planMilkSchema,
  planSchema,
  planYieldSchema,
} from "../../../core/spec/plan.ts";
import { PUNCH, planFor, unwashed } from "../../support/world/punch-spec.ts";

const plan = planFor(PUNCH, { by: "volume", volume: 5000 });

test("a plan that was frozen into a run reads back the same, from storage too", () => {
  for (const one of [plan, planFor(unwashed(), { by: "serves", serves: 12 })]) {
    expect(planSchema.parse(one)).toEqual(one);
    expect(planSchema.parse(JSON.parse(JSON.stringify(one)))).toEqual(one);
  }
});

test("a plan of before the yield said what it was worked out with is still one", () => {
  const { curdKeeps: _, filterKeeps: __, ...older } = plan.yield ?? {};
  expect(planSchema.safeParse({ ...plan, yield: older }).success).toBe(true);
});

test.each<[string, object]>([
  ["another version", { v: 2 }],
  ["a scale that is no number", { scale: Number.NaN }],
  ["a negative volume", { finalMl: -1 }],
  ["negative ethanol", { mixed: { ...plan.mixed, ethanol: -0.001 } }],
  ["endless water", { final: { ...plan.final, water: Number.POSITIVE_INFINITY } }],
  ["nobody's ounce", { ounce: "troy" }],
  ["no spec", { spec: undefined }],
  ["a temperature that is no number", { servedAt: "cold" }],
])("a plan with %s is refused", (_, wrong) => {
  expect(planSchema.safeParse({ ...plan, ...wrong }).success).toBe(false);
});

test("its parts are bounded too", () => {
  const [line] = plan.lines;
  expect(planLineSchema.parse(line)).toEqual(line);
  expect(planLineSchema.safeParse({ ...line, name: "x".repeat(81) }).success).toBe(false);
  expect(planLineSchema.safeParse({ ...line, before: { ml: -1, g: 0 } }).success).toBe(false);
  expect(planMilkSchema.parse(plan.milk)).toEqual(plan.milk);
  expect(planMilkSchema.safeParse({ ...plan.milk, dairy: "yak" }).success).toBe(false);
  expect(planYieldSchema.parse(plan.yield)).toEqual(plan.yield);
  expect(planYieldSchema.safeParse({ ...plan.yield, from: "hearsay" }).success).toBe(false);
});

test("what is no part of a plan is left out, prototypes too", () => {
  const stray = JSON.parse('{"__proto__": {"scale": 9}, "extra": 1}');
  expect(planSchema.parse({ ...plan, ...stray, mixed: { ...plan.mixed, ...stray } })).toEqual(plan);
});
