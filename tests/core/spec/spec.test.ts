import { expect, test } from "vitest";
import { MASS_MEASURES, VOLUME_MEASURES } from "../../../core/quantity/measures-table.ts";
import {
  batchSizeSchema,
  SERVE_METHODS,
  serveSchema,
  specLineSchema,
  specSchema,
  topUpSchema,
  washSchema,
} from "../../../core/spec/spec.ts";
import { lineOf, PUNCH, unwashed } from "../../support/world/punch-spec.ts";

test("a spec reads back as it was written", () => {
  for (const spec of [PUNCH, unwashed(), { ...PUNCH, demo: true, lines: [] }]) {
    expect(specSchema.parse(spec)).toEqual(spec);
  }
});

test("a line may be written in any unit of the trade", () => {
  for (const unit of [...Object.keys(VOLUME_MEASURES), ...Object.keys(MASS_MEASURES), "oz"]) {
    const line = { ...lineOf("brandy-40", 1), amount: { value: 1, unit } };
    expect(specLineSchema.parse(line)).toEqual(line);
  }
});

test.each([
  ["hogshead", 1],
  ["__proto__", 1],
  ["constructor", 1],
  ["", 1],
  ["ml", 0],
  ["ml", -1],
  ["ml", Number.NaN],
  ["ml", 1_000_001],
])("an amount in %s, %s of it, is refused", (unit, value) => {
  const line = { ...lineOf("brandy-40", 1), amount: { value, unit } };
  expect(specLineSchema.safeParse(line).success).toBe(false);
});

test.each([-0.01, 1.01, Number.NaN])("no line holds back %s of itself", (heldBack) => {
  expect(specLineSchema.safeParse({ ...lineOf("brandy-40", 1), heldBack }).success).toBe(false);
});

// Milk to punch 1:8 to 1:2 in practice (DAIRY.md); the bounds here only catch slips.
test.each<[string, object]>([
  ["hardly any milk", { ratio: 0.01 }],
  ["more than twice the punch", { ratio: 2.1 }],
  ["half a filter", { filters: 1.5 }],
  ["no filter", { filters: 0 }],
  ["an order nobody pours in", { order: "both-at-once" }],
  ["a milk without a name", { dairyId: "" }],
])("a wash with %s is refused", (_, wrong) => {
  expect(washSchema.safeParse(PUNCH.wash).success).toBe(true);
  expect(washSchema.safeParse({ ...PUNCH.wash, ...wrong }).success).toBe(false);
});

test("a top-up follows one of three rules", () => {
  for (const rule of [
    { rule: "proportion" },
    { rule: "fixed" },
    { rule: "strength", target: 0.2 },
  ]) {
    expect(topUpSchema.parse(rule)).toEqual(rule);
  }
  for (const target of [0, 1, Number.NaN, undefined]) {
    expect(topUpSchema.safeParse({ rule: "strength", target }).success).toBe(false);
  }
  expect(topUpSchema.safeParse({ rule: "by feel" }).success).toBe(false);
});

test("a serve is poured and chilled in one of the ways there are", () => {
  for (const method of SERVE_METHODS) {
    expect(serveSchema.safeParse({ ...PUNCH.serve, method }).success).toBe(true);
  }
  for (const wrong of [
    { method: "thrown" },
    { pour: 0 },
    { dilution: -0.1 },
    { glass: "x".repeat(61) },
  ]) {
    expect(serveSchema.safeParse({ ...PUNCH.serve, ...wrong }).success).toBe(false);
  }
});

test.each<[string, object]>([
  ["no name", { name: "" }],
  ["a huge note", { notes: "x".repeat(2001) }],
  ["no version", { version: 0 }],
  ["no day to keep it", { keepDays: 0 }],
  ["more than a year", { keepDays: 366 }],
  ["lines that are no list", { lines: "gin" }],
])("a spec with %s is refused", (_, wrong) => {
  expect(specSchema.safeParse({ ...PUNCH, ...wrong }).success).toBe(false);
});

test("a size is asked for in one of the ways there are", () => {
  const sizes = [
    { by: "serves", serves: 40 },
    { by: "bottles", bottles: 6, size: 750 },
    { by: "volume", volume: 5000 },
    { by: "vessel", vessel: 8000 },
    { by: "stock", ingredientId: "brandy-40", amount: { value: 2, unit: "l" } },
  ];
  for (const size of sizes) expect(batchSizeSchema.parse(size)).toEqual(size);
  const wrong = [
    { by: "serves", serves: 0 },
    { by: "bottles", bottles: 6, size: Number.POSITIVE_INFINITY },
    { by: "volume", volume: 1_000_001 },
    { by: "weight", g: 10 },
    { by: "stock", ingredientId: "brandy-40", amount: { value: 2, unit: "__proto__" } },
  ];
  for (const size of wrong) expect(batchSizeSchema.safeParse(size).success).toBe(false);
});

test("what is no part of a spec is left out, prototypes too", () => {
  const stray = JSON.parse('{"__proto__": {"demo": true}, "extra": 2}');
  const parsed = specSchema.parse({ ...PUNCH, ...stray });
  expect(parsed).toEqual(PUNCH);
  expect(parsed.demo).toBeUndefined();
});
