import fc from "fast-check";
import { expect, test } from "vitest";
import { dairyOf } from "../../../core/acid/milk.ts";
import {
  acidPerLitre,
  brixOf,
  massOf,
  strengthOf,
  sugarPerLitre,
  volumeOf,
} from "../../../core/liquid/liquid.ts";
import { totalAcid } from "../../../core/quantity/acid-name.ts";
import { CUPBOARD } from "../../../core/spec/cupboard-table.ts";
import type { Ingredient } from "../../../core/spec/ingredient.ts";
import { portionOf } from "../../../core/spec/ingredient-liquid.ts";
import { dryOf, fromCupboard, must } from "../../support/world/punch-spec.ts";

const LITRE = { kind: "volume", ml: 1000 } as const;
const KILO = { kind: "mass", g: 1000 } as const;

const syrup = (brix: number, rest: Partial<Ingredient> = {}): Ingredient =>
  fromCupboard("syrup-1-1", { sweetness: { as: "brix", value: brix }, ...rest });

// ICUMSA SPS-4 by the reference notes (LIQUIDS.md): 1:1 by weight 614.8 g/L, 2:1 by weight 884.5 g/L.
test.each([
  [50, 614.8, 1229.7],
  [66.667, 884.5, 1326.7],
])("a syrup of %s °Bx holds %s g of sugar per litre", (brix, sugar, g) => {
  const { liquid, ml, g: weighs } = must(portionOf(syrup(brix), LITRE));
  expect(Math.abs(liquid.sugar - sugar)).toBeLessThan(0.1);
  expect(ml).toBe(1000);
  expect(Math.abs(weighs - g)).toBeLessThan(0.5);
});

// OIML R 22 (1975): 40 % vol is 948.05 kg/m3 and 33.300 % by mass.
test("a litre of spirit at 40 % weighs 948.05 g, a third of it ethanol", () => {
  const { liquid, g } = must(portionOf(fromCupboard("vodka-40"), LITRE));
  expect(g).toBeCloseTo(948.05, 2);
  expect(liquid.ethanol / massOf(liquid)).toBeCloseTo(0.333, 5);
});

// Penniston and others, J. Endourology 22 (2008), in the reference notes: lemon 48 g/L of citric acid.
test("a litre of lemon juice holds its acids", () => {
  const { liquid } = must(portionOf(fromCupboard("lemon-juice"), LITRE));
  expect(liquid.acids).toEqual({ citric: 48, malic: 2 });
  expect(liquid.cation).toBeCloseTo(0.034, 12);
});

// °Brix is by definition grams of sugar in 100 g, whatever else is dissolved (ICUMSA).
test.each<[string, Partial<Ingredient>]>([
  ["a liqueur", { strength: 0.25 }],
  ["a sour syrup", { acids: { citric: 60, malic: 20 } }],
  ["a strong, sour and salted one", { strength: 0.15, acids: { citric: 30 }, solids: 20 }],
  ["one whose density was measured", { strength: 0.25, density: 1060 }],
])("the sugar of %s is what its °Brix says", (_, rest) => {
  for (const brix of [5, 30, 40]) {
    const density = rest.density === undefined ? {} : { density: 1000 + 3 * brix };
    const { liquid } = must(portionOf(syrup(brix, { ...rest, ...density }), LITRE));
    expect(brixOf(liquid)).toBeCloseTo(brix, 6);
  }
});

test("near the end of what fits, °Brix beside alcohol is still solved", () => {
  const { liquid } = must(portionOf(syrup(85, { strength: 0.2 }), LITRE));
  expect(brixOf(liquid)).toBeCloseTo(85, 6);
  expect(portionOf(syrup(85, { strength: 0.3 }), LITRE)).toMatchObject({ ok: false });
});

// Composition of whole milk: USDA Handbook 8 in dairy-table.ts; fat and casein are not dissolved.
test("plain milk is the dairy table's, without fat and casein", () => {
  const dairy = dairyOf("whole");
  const { liquid, ml, g } = must(portionOf(fromCupboard("milk-whole"), LITRE));
  expect([liquid.water, liquid.solids]).toEqual([dairy.water, dairy.lactose + dairy.otherSolids]);
  expect([ml, g]).toEqual([1000, 1030]);
  expect(must(portionOf(fromCupboard("milk-whole"), { kind: "mass", g: 1030 })).ml).toBeCloseTo(
    1000,
    9,
  );
});

test("sweetened, soured or strengthened dairy keeps what was put in", () => {
  const condensed = fromCupboard("milk-whole", { sweetness: { as: "brix", value: 45 } });
  expect(brixOf(must(portionOf(condensed, LITRE)).liquid)).toBeCloseTo(45, 6);
  const liqueur = fromCupboard("cream", { strength: 0.17, sweetness: { as: "g/L", value: 200 } });
  const { liquid } = must(portionOf(liqueur, LITRE));
  expect(strengthOf(liquid)).toBeCloseTo(0.17, 9);
  expect(sugarPerLitre(liquid)).toBeCloseTo(200, 6);
  expect(liquid.solids).toBeGreaterThan(0);
  const strong = must(portionOf(fromCupboard("cream", { strength: 0.17 }), LITRE));
  expect(strengthOf(strong.liquid)).toBeCloseTo(0.17, 9);
  const sour = must(portionOf(fromCupboard("milk-skim", { acids: { lactic: 9 } }), LITRE));
  expect(acidPerLitre(sour.liquid)).toBeCloseTo(9, 6);
});

test("dry goods are weighed: grams per kilogram go over, and nothing takes room in a measure", () => {
  const citric = must(portionOf(fromCupboard("citric-acid"), { kind: "mass", g: 5 }));
  expect(citric).toMatchObject({ ml: 0, g: 5, liquid: { acids: { citric: 5 }, water: 0 } });
  const fruit = dryOf("fruit", {
    waterShare: 0.85,
    sweetness: { as: "brix", value: 10 },
    cation: 0.05,
  });
  const { liquid } = must(portionOf(fruit, KILO));
  expect([liquid.water, liquid.sugar, liquid.cation]).toEqual([850, 100, 0.05]);
  expect(portionOf(fromCupboard("citric-acid"), LITRE)).toEqual({
    ok: false,
    refusal: "dry-needs-weight",
    about: { name: "Citric acid, powder" },
  });
});

test.each<[string, Ingredient]>([
  ["sugar and alcohol that need more than a litre", syrup(80, { strength: 0.6 })],
  ["a strength above 1", fromCupboard("vodka-40", { strength: 1.2 })],
  ["a density far from what is in it", fromCupboard("vodka-40", { density: 1200 })],
  ["a strength that is no number", fromCupboard("vodka-40", { strength: Number.NaN })],
  ["half a gram too much in a kilogram", dryOf("y", { acids: { citric: 600, malic: 400.5 } })],
  ["more in a kilogram than a kilogram", dryOf("x", { acids: { citric: 600, malic: 500 } })],
])("%s: impossible, and said by name", (_, ingredient) => {
  const amount = ingredient.kind === "dry" ? KILO : LITRE;
  expect(portionOf(ingredient, amount)).toEqual({
    ok: false,
    refusal: "ingredient-impossible",
    about: { name: ingredient.name },
  });
});

const anyWet = fc.constantFrom(...CUPBOARD.filter((one) => one.kind !== "dry"));

test("property: by volume or by weight, it is the same liquid", () => {
  fc.assert(
    fc.property(anyWet, fc.double({ min: 0.1, max: 5000, noNaN: true }), (ingredient, ml) => {
      const poured = must(portionOf(ingredient, { kind: "volume", ml }));
      const weighed = must(portionOf(ingredient, { kind: "mass", g: poured.g }));
      expect(weighed.ml / ml).toBeCloseTo(1, 9);
      expect(massOf(weighed.liquid) / massOf(poured.liquid)).toBeCloseTo(1, 9);
    }),
  );
});

test("property: a portion is as strong, sweet and sour as its ingredient says, at any size", () => {
  const plain = fc.constantFrom(...CUPBOARD.filter((one) => one.kind !== "dry" && !one.dairy));
  fc.assert(
    fc.property(plain, fc.double({ min: 0.1, max: 5000, noNaN: true }), (ingredient, ml) => {
      const { liquid } = must(portionOf(ingredient, { kind: "volume", ml }));
      expect(strengthOf(liquid)).toBeCloseTo(ingredient.strength, 9);
      expect(acidPerLitre(liquid)).toBeCloseTo(totalAcid(ingredient.acids), 5);
      expect(volumeOf(liquid) / ml).toBeCloseTo(1, 5);
      const { as, value } = ingredient.sweetness;
      expect(as === "brix" ? brixOf(liquid) : sugarPerLitre(liquid)).toBeCloseTo(value, 4);
    }),
  );
});
