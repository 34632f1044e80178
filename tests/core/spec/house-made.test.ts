import { expect, test } from "vitest";
import { ingredientsThrough, usedIn } from "../../../core/spec/house-made.ts";
import type { Spec } from "../../../core/spec/spec.ts";
import { cupboardWith, dryOf, lineOf, PUNCH } from "../../support/world/punch-spec.ts";

const orgeat: Spec = {
  ...PUNCH,
  id: "orgeat-spec",
  lines: [lineOf("almond-milk", 100), lineOf("syrup-1-1", 100)],
};
const cordial: Spec = { ...PUNCH, id: "cordial-spec", lines: [lineOf("house-orgeat", 50)] };
const HOUSE = cupboardWith(
  dryOf("house-orgeat", { madeFrom: "orgeat-spec" }),
  dryOf("house-cordial", { madeFrom: "cordial-spec" }),
);
const specBook = (...specs: readonly Spec[]) => new Map(specs.map((spec) => [spec.id, spec]));

test("what a spec uses is its lines and the dairy of its wash", () => {
  expect(usedIn(orgeat)).toEqual(["almond-milk", "syrup-1-1", "milk-whole"]);
});

test("what the house makes is followed down to what was bought, each thing once", () => {
  const { ingredients, missing } = ingredientsThrough(
    ["house-cordial", "almond-milk"],
    HOUSE,
    specBook(orgeat, cordial),
  );
  expect(ingredients.map(({ id }) => id).toSorted()).toEqual([
    "almond-milk",
    "house-cordial",
    "house-orgeat",
    "milk-whole",
    "syrup-1-1",
  ]);
  expect(missing).toEqual([]);
});

test("specs made of each other are followed once", () => {
  const loop: Spec = { ...orgeat, lines: [...orgeat.lines, lineOf("house-cordial", 5)] };
  const { ingredients } = ingredientsThrough(["house-cordial"], HOUSE, specBook(loop, cordial));
  const ids = ingredients.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(ids).toEqual(expect.arrayContaining(["house-orgeat", "house-cordial", "almond-milk"]));
});

test("what is in neither cupboard nor book is named", () => {
  expect(ingredientsThrough(["house-cordial", "gone"], HOUSE, specBook(cordial)).missing).toEqual([
    "gone",
    "orgeat-spec",
  ]);
});
