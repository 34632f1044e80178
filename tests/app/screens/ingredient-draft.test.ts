import { expect, test } from "vitest";
import { blankOf, draftOf, type IngredientDraft } from "../../../app/screens/ingredient/draft.ts";
import { readDraft } from "../../../app/screens/ingredient/read-draft.ts";
import { sayLater } from "../../../app/words/say-later.ts";
import { pHOf } from "../../../core/acid/charge-balance.ts";
import { molarOf } from "../../../core/acid/molar.ts";
import { CUPBOARD } from "../../../core/spec/cupboard-table.ts";
import { ingredientSchema } from "../../../core/spec/ingredient.ts";

const blank = blankOf("Plum");
const read = (change: Partial<IngredientDraft>) =>
  readDraft({ ...blank, ...change }, "a", undefined);

test.each(CUPBOARD)("$name goes through the form unchanged", (one) => {
  const again = readDraft(draftOf(one), one.id, one);
  expect([...again.faults]).toEqual([]);
  expect(again.ingredient).toEqual(one);
  expect(ingredientSchema.safeParse(again.ingredient).success).toBe(true);
});

const RUBBISH: readonly [Partial<IngredientDraft>, string][] = [
  [{ name: " " }, "name"],
  [{ strength: "140" }, "strength"],
  [{ strength: "-4" }, "strength"],
  [{ strength: "abc" }, "strength"],
  [{ kind: "syrup", sweetAs: "brix", sweet: "95" }, "sweet"],
  [{ kind: "syrup", sweetAs: "brix", sweet: "abc" }, "sweet"],
  [{ kind: "syrup", sweet: "1201" }, "sweet"],
  [{ kind: "dry", sweet: "1001" }, "sweet"],
  [{ kind: "juice", acids: { ...blank.acids, citric: "-1" } }, "acid:citric"],
  [{ kind: "juice", acids: { ...blank.acids, malic: "lots" } }, "acid:malic"],
  [{ kind: "juice", acids: { ...blank.acids, citric: "48" }, pH: "9" }, "pH"],
  [{ kind: "juice", acids: { ...blank.acids, citric: "48" }, pH: "1.2" }, "pH"],
  [{ strength: "40", density: "40" }, "density"],
  [{ strength: "40", density: "1050" }, "density"],
  [{ strength: "80", sweet: "600" }, "whole"],
  [{ paid: "18" }, "pack"],
  [{ pack: "700 ml" }, "paid"],
  [{ paid: "18", pack: "700 g" }, "pack"],
  [{ kind: "dry", absorbs: "21" }, "absorbs"],
  [{ kind: "dry", absorbs: "much" }, "absorbs"],
  [{ kind: "dry", waterShare: "85" }, "waterShare"],
  [{ kind: "dry", sweet: "200", waterShare: "0.85" }, "whole"],
  [{ kind: "dry", paid: "18", pack: "700 ml" }, "pack"],
];

test.each(RUBBISH)("%j gets one sentence, at its own field", (change, key) => {
  const { ingredient, faults } = read(change);
  expect(ingredient).toBeUndefined();
  expect([...faults.keys()]).toEqual([key]);
  expect(faults.get(key)).toMatch(/^[A-Z].+[.]$/u);
});

test("more than a kilogram in a kilogram is said of dry goods, more than a litre of all else", () => {
  const { impossible, impossibleDry } = sayLater.ingredient;
  const dry = read({ kind: "dry", sweet: "200", waterShare: "0.85" });
  expect(dry.faults.get("whole")).toBe(impossibleDry);
  expect(read({ strength: "80", sweet: "600" }).faults.get("whole")).toBe(impossible);
});

test("a density is worked out unless it was measured: 40 % spirit at 20 °C weighs 948.05 g/L (OIML R 22)", () => {
  const worked = read({ strength: "40 %" });
  expect(worked.density).toBeCloseTo(948.05, 1);
  expect(worked.ingredient).toMatchObject({ name: blank.name });
  expect(worked.ingredient).not.toHaveProperty("density");
  expect(read({ strength: "40", density: "950 kg/m3" }).ingredient?.density).toBe(950);
});

test("a measured pH sets the cation, so that the model gives the pH back", () => {
  const acids = { ...blank.acids, citric: "48", malic: "2" };
  const { ingredient } = read({ kind: "juice", acids, pH: "2,3" });
  if (ingredient === undefined) throw new RangeError("expected an ingredient, got none");
  expect(pHOf({ acids: molarOf(ingredient.acids), cation: ingredient.cation })).toBeCloseTo(2.3, 4);
});

test("without a pH the cation stays as it was", () => {
  const lemon = CUPBOARD.find(({ id }) => id === "lemon-juice");
  if (lemon === undefined) throw new RangeError("expected lemon juice in the cupboard");
  const again = readDraft({ ...draftOf(lemon), sweet: "30" }, lemon.id, lemon);
  expect(again.ingredient?.cation).toBe(lemon.cation);
});

test("overproof follows from the strength, cold from the milk; what else is ticked stays", () => {
  expect(read({ strength: "50" }).ingredient?.cautions).toEqual(["overproof"]);
  expect(read({ strength: "49.9" }).ingredient?.cautions).toEqual([]);
  expect(read({ cautions: ["grapefruit"], strength: "60" }).ingredient?.cautions).toEqual([
    "grapefruit",
    "overproof",
  ]);
  const base = read({ kind: "tea" }).ingredient;
  if (base === undefined) throw new RangeError("expected an ingredient, got none");
  const odd = { ...base, cautions: ["from-elsewhere", "quinine"] };
  expect(readDraft(draftOf(odd), "a", odd).ingredient?.cautions).toEqual(odd.cautions);
});

test("figures that its kind cannot have are left out", () => {
  const { ingredient } = read({ kind: "dairy", strength: "abc", sweet: "x", density: "y" });
  expect(ingredient).toMatchObject({ dairy: "whole", strength: 0, cautions: ["keep-cold"] });
  expect(ingredient?.density).toBeUndefined();
});

test("fruit that is strained out keeps and gives; what dissolves has neither", () => {
  const plums = read({ kind: "dry", sweet: "90", absorbs: "0.8 ml/g", waterShare: "0,85" });
  expect(plums.ingredient).toMatchObject({ absorbs: 0.8, waterShare: 0.85 });
  expect(Object.keys(read({ kind: "dry" }).ingredient ?? {})).not.toContain("absorbs");
});

test("what it is made from is kept", () => {
  const { ingredient } = read({ madeFrom: "spec-1" });
  if (ingredient === undefined) throw new RangeError("expected an ingredient, got none");
  expect(ingredient.madeFrom).toBe("spec-1");
  expect(readDraft(draftOf(ingredient), "a", ingredient).ingredient).toEqual(ingredient);
});

test("a price is kept per pack of ml, or of g for dry goods", () => {
  expect(read({ paid: "18,50", pack: "0.7 l" }).ingredient?.price).toEqual({
    paid: 18.5,
    pack: 700,
  });
  expect(read({ kind: "dry", paid: "2", pack: "1 kg" }).ingredient?.price?.pack).toBe(1000);
});
