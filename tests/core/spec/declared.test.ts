import fc from "fast-check";
import { expect, test } from "vitest";
import { DAIRY_KINDS } from "../../../core/acid/dairy-kind-table.ts";
import { ALLERGENS } from "../../../core/spec/allergen-table.ts";
import { CAUTIONS } from "../../../core/spec/caution-table.ts";
import { CUPBOARD } from "../../../core/spec/cupboard-table.ts";
import {
  allergensOf,
  allergensThrough,
  cautionsOf,
  declaredCupboard,
  milkStays,
} from "../../../core/spec/declared.ts";
import type { Ingredient } from "../../../core/spec/ingredient.ts";

import type { Spec } from "../../../core/spec/spec.ts";
import { cupboardWith, fromCupboard, lineOf, PUNCH } from "../../support/world/punch-spec.ts";

const [plain] = CUPBOARD;
if (plain === undefined) throw new RangeError("the cupboard is empty");
const with_ = (rest: Partial<Ingredient>): Ingredient => ({
  ...plain,
  allergens: [],
  cautions: [],
  ...rest,
});

// Order and groups: Regulation (EU) No 1169/2011, Annex II, as in the project's reference notes.
test("the fourteen groups stand in the order of the EU list", () => {
  expect(ALLERGENS).toHaveLength(14);
  expect(allergensOf([with_({ allergens: [...ALLERGENS].reverse() })])).toEqual([...ALLERGENS]);
});

test.each([
  ["whole", ["milk"]],
  ["skim", ["milk"]],
  ["cream", ["milk"]],
  ["goat", ["milk"]],
  ["soy", ["soy"]],
  ["oat", ["gluten"]],
  ["almond", ["nuts"]],
  ["coconut", []],
] as const)("%s declares %j even where nobody ticked it", (dairy, allergens) => {
  expect(allergensOf([with_({ dairy })])).toEqual(allergens);
});

test("every dairy has its allergens and is kept cold", () => {
  for (const dairy of DAIRY_KINDS) {
    expect(() => allergensOf([with_({ dairy })])).not.toThrow();
    expect(cautionsOf([with_({ dairy })])).toEqual(["keep-cold"]);
  }
});

test("the cupboard declares what it should", () => {
  const named = (...ids: string[]) => CUPBOARD.filter(({ id }) => ids.includes(id));
  expect(allergensOf(named("gin-43", "dry-vermouth-18", "milk-whole"))).toEqual([
    "milk",
    "sulphites",
  ]);
  expect(cautionsOf(named("pot-still-rum-57", "grapefruit-juice", "milk-whole"))).toEqual([
    "keep-cold",
    "overproof",
    "grapefruit",
    "fresh-juice",
  ]);
});

test("every caution of the cupboard is in the table", () => {
  const used = CUPBOARD.flatMap(({ cautions }) => cautions);
  expect(used.length).toBeGreaterThan(5);
  expect(used.filter((code) => !CAUTIONS.some((known) => known === code))).toEqual([]);
});

test("a caution this version does not know is kept, after the known ones", () => {
  const odd = with_({ cautions: ["zinc", "fresh-juice", "ash"] });
  expect(cautionsOf([odd, odd])).toEqual(["fresh-juice", "ash", "zinc"]);
});

test("nothing is lost, doubled or dependent on the order of the ingredients", () => {
  const some = fc.subarray([...CUPBOARD]);
  fc.assert(
    fc.property(some, some, (a, b) => {
      const both = allergensOf([...a, ...b]);
      expect(both).toEqual(allergensOf([...b, ...a]));
      expect(new Set(both)).toEqual(new Set([...allergensOf(a), ...allergensOf(b)]));
      expect(new Set(both).size).toBe(both.length);
      expect(cautionsOf([...a, ...b])).toEqual(cautionsOf([...b, ...a]));
    }),
  );
});

const orgeat: Spec = {
  ...PUNCH,
  id: "orgeat-spec",
  lines: [lineOf("almond-milk", 100), lineOf("syrup-1-1", 100)],
};
const cordial: Spec = { ...PUNCH, id: "cordial-spec", lines: [lineOf("house-orgeat", 50)] };
const HOUSE = cupboardWith(
  with_({ id: "house-orgeat", madeFrom: "orgeat-spec" }),
  with_({ id: "house-cordial", madeFrom: "cordial-spec" }),
);
const specBook = (...specs: readonly Spec[]) => new Map(specs.map((spec) => [spec.id, spec]));

test("allergens come up through what the house makes itself, its wash among them", () => {
  const through = allergensThrough(["house-cordial"], HOUSE, specBook(orgeat, cordial));
  expect(through).toEqual({ allergens: ["milk", "nuts"], missing: [] });
  const { wash: _, ...dry } = cordial;
  const bare = allergensThrough(["house-cordial"], HOUSE, specBook(orgeat, dry));
  expect(bare.allergens).toEqual(["milk", "nuts"]);
  const { wash: __, ...still } = orgeat;
  expect(allergensThrough(["house-cordial"], HOUSE, specBook(still, dry)).allergens).toEqual([
    "nuts",
  ]);
});

test("a spec made of itself still declares what else is in it", () => {
  const itself = cupboardWith(with_({ id: "house-orgeat", madeFrom: "orgeat-spec" }));
  const own: Spec = { ...orgeat, lines: [lineOf("house-orgeat", 5)] };
  expect(allergensThrough(["house-orgeat"], itself, specBook(own)).allergens).toEqual(["milk"]);
});

test("what cannot be looked up is named, never passed over", () => {
  const lost = allergensThrough(["house-cordial", "gone"], HOUSE, specBook(cordial));
  expect(lost.missing).toEqual(["gone", "orgeat-spec"]);
});

test("the declared cupboard carries them, and leaves what was bought alone", () => {
  const specs = specBook(orgeat, cordial);
  const declared = declaredCupboard(HOUSE, specs);
  expect(declared.get("house-cordial")?.allergens).toEqual(["milk", "nuts"]);
  expect(declared.get("house-cordial")?.cautions).toContain("keep-cold");
  expect(declared.get("gin-43")).toBe(HOUSE.get("gin-43"));
  expect(declared.size).toBe(HOUSE.size);
  const own = with_({ id: "house-orgeat", madeFrom: "orgeat-spec", allergens: ["egg"] });
  expect(declaredCupboard(cupboardWith(own), specs).get("house-orgeat")?.allergens).toEqual([
    "egg",
    "milk",
    "nuts",
  ]);
  expect(fromCupboard("gin-43").allergens).toEqual([]);
});

test("milk stays in what was washed, whichever ingredient brought it; nothing is washed out of the rest", () => {
  const [milk, soy] = [fromCupboard("milk-whole"), fromCupboard("soy-milk")];
  const liqueur = with_({ id: "cream-liqueur", allergens: ["milk"] });
  const { wash: _, ...still } = PUNCH;
  expect(milkStays({ spec: PUNCH, ingredients: [milk] })).toBe(true);
  expect(milkStays({ spec: PUNCH, ingredients: [soy, liqueur] })).toBe(true);
  expect(milkStays({ spec: PUNCH, ingredients: [soy] })).toBe(false);
  expect(milkStays({ spec: still, ingredients: [liqueur] })).toBe(false);
});
