import { expect, test } from "vitest";
import { CUPBOARD } from "../../../core/spec/cupboard-table.ts";
import { findIngredients, foldedWords } from "../../../core/spec/find-ingredient.ts";
import type { Ingredient } from "../../../core/spec/ingredient.ts";

const own = (id: string, name: string): Ingredient => ({
  id,
  name,
  kind: "liqueur",
  strength: 0.2,
  sweetness: { as: "g/L", value: 300 },
  acids: {},
  cation: 0,
  allergens: [],
  cautions: [],
});

test("accents, case, ligatures and punctuation fold away", () => {
  expect(foldedWords("Crème de Mûre")).toEqual(["creme", "de", "mure"]);
  expect(foldedWords("STRAẞE œuf Æble Øl Łuk 2:1")).toEqual([
    "strasse",
    "oeuf",
    "aeble",
    "ol",
    "luk",
    "2",
    "1",
  ]);
  expect(findIngredients("creme de mure", [own("a", "Crème de mûre")]).sure?.id).toBe("a");
});

test("a whole name wins over names that begin with it", () => {
  const shelf = [own("long", "Plum shrub, spiced"), own("exact", "Plum shrub")];
  expect(findIngredients("plum shrub", shelf).sure?.id).toBe("exact");
});

test("the same name twice is asked about", () => {
  const { sure, candidates } = findIngredients("plum", [own("a", "Plum"), own("b", "Plum")]);
  expect(sure).toBeUndefined();
  expect(candidates).toHaveLength(2);
});

test("every ingredient of the cupboard is found by its own name, and by its words turned round", () => {
  for (const ingredient of CUPBOARD) {
    expect(findIngredients(ingredient.name, CUPBOARD).sure).toBe(ingredient);
    const turned = [...foldedWords(ingredient.name)].reverse().join(" ");
    expect(findIngredients(turned, CUPBOARD).candidates).toContain(ingredient);
  }
});
