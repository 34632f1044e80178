import { expect, test } from "vitest";
import { DAIRIES } from "../../../core/acid/dairy-table.ts";
import { CUPBOARD } from "../../../core/spec/cupboard-table.ts";
import {
  acidsSchema,
  INGREDIENT_KINDS,
  ingredientSchema,
  sweetnessSchema,
} from "../../../core/spec/ingredient.ts";
import { fromCupboard } from "../../support/world/punch-spec.ts";

test.each(CUPBOARD.map((one) => [one.id, one] as const))("the cupboard's %s is one", (_, one) => {
  expect(ingredientSchema.parse(one)).toEqual(one);
});

test("the cupboard has no two of one id, and something on every shelf", () => {
  expect(new Set(CUPBOARD.map((one) => one.id)).size).toBe(CUPBOARD.length);
  expect(new Set(CUPBOARD.map((one) => one.kind))).toEqual(new Set(INGREDIENT_KINDS));
});

test("every dairy that the curdling model knows can be chosen", () => {
  for (const dairy of Object.keys(DAIRIES)) {
    const milk = { ...fromCupboard("milk-whole"), dairy };
    expect(ingredientSchema.safeParse(milk).success, dairy).toBe(true);
  }
});

// Regulation (EU) No 1169/2011, Annex II, point 7: milk; the plant milks by their own groups.
test("milk and the plant milks carry their allergens from the start", () => {
  const of = (id: string) => fromCupboard(id).allergens;
  expect([of("milk-whole"), of("milk-skim"), of("cream")]).toEqual([["milk"], ["milk"], ["milk"]]);
  expect([of("soy-milk"), of("oat-milk"), of("almond-milk")]).toEqual([
    ["soy"],
    ["gluten"],
    ["nuts"],
  ]);
});

// Overproof from 50 % vol: flash point 24 °C or below, reference notes (DAIRY.md).
test("strong spirit warns, juice and milk too", () => {
  const warned = (id: string) => fromCupboard(id).cautions;
  expect([warned("rye-50"), warned("neutral-96"), warned("pot-still-rum-57")]).toEqual([
    ["overproof"],
    ["overproof"],
    ["overproof"],
  ]);
  expect(warned("brandy-40")).toEqual([]);
  expect(warned("grapefruit-juice")).toEqual(["fresh-juice", "grapefruit"]);
  expect(warned("milk-whole")).toEqual(["keep-cold"]);
});

const BRANDY = fromCupboard("brandy-40");

test.each<[string, object]>([
  ["no id", { id: "" }],
  ["a huge name", { name: "x".repeat(81) }],
  ["a shelf nobody has", { kind: "potion" }],
  ["a strength above 1", { strength: 1.01 }],
  ["a strength below 0", { strength: -0.01 }],
  ["a strength that is no number", { strength: Number.NaN }],
  ["endless strength", { strength: Number.POSITIVE_INFINITY }],
  ["more °Brix than stays dissolved", { sweetness: { as: "brix", value: 86 } }],
  ["sweetness in nobody's unit", { sweetness: { as: "oechsle", value: 10 } }],
  ["negative acid", { acids: { citric: -1 } }],
  ["a cation beyond reason", { cation: 6 }],
  ["a density beyond reason", { density: 599 }],
  ["a dairy nobody knows", { dairy: "yak" }],
  ["an allergen nobody knows", { allergens: ["dust"] }],
  ["an allergen by the name of a prototype", { allergens: ["__proto__"] }],
  ["a free pack of nothing", { price: { paid: 1, pack: 0 } }],
  ["water beyond its weight", { waterShare: 1.1 }],
])("refused: %s", (_, wrong) => {
  expect(ingredientSchema.safeParse({ ...BRANDY, ...wrong }).success).toBe(false);
});

test("what is no part of an ingredient is left out, prototypes too", () => {
  const stray = JSON.parse('{"__proto__": {"strength": 1}, "constructor": 1, "extra": 2}');
  expect(ingredientSchema.parse({ ...BRANDY, ...stray })).toEqual(BRANDY);
  expect(acidsSchema.parse(JSON.parse('{"citric": 48, "__proto__": 1, "oxalic": 3}'))).toEqual({
    citric: 48,
  });
});

test("sweetness reads back as it was typed", () => {
  for (const one of [
    { as: "brix", value: 50 },
    { as: "g/L", value: 0 },
  ]) {
    expect(sweetnessSchema.parse(one)).toEqual(one);
  }
});
