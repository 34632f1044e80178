import fc from "fast-check";
import { expect, test } from "vitest";
import { CUPBOARD } from "../../../core/spec/cupboard-table.ts";
import { foldedWords } from "../../../core/spec/find-ingredient.ts";
import { readIngredientLine } from "../../../core/spec/ingredient-line.ts";

// Lines as bar people write them: common practice, no source.
const SURE: readonly [string, number, string, string][] = [
  ["45ml lemon juice", 45, "ml", "lemon-juice"],
  ["45 ml of lemon juice", 45, "ml", "lemon-juice"],
  ["1 1/2 oz gin", 1.5, "oz", "gin-43"],
  ["¾ oz LIME", 0.75, "oz", "lime-juice"],
  ["22,5 ml fresh lime juice", 22.5, "ml", "lime-juice"],
  ["2 dashes bitters", 2, "dash", "aromatic-bitters-44"],
  ["0.3 g citric", 0.3, "g", "citric-acid"],
  ["30 ml eau de vie", 30, "ml", "pear-eau-de-vie-42"],
  ["30 ml Éau-de-Vie", 30, "ml", "pear-eau-de-vie-42"],
  ["10 ml rum 57", 10, "ml", "pot-still-rum-57"],
  ["1 l water", 1, "l", "water"],
  ["20 ml ginger", 20, "ml", "ginger-syrup-2-1"],
  ["25 ml ool", 25, "ml", "oolong-tea"],
  ["15 ml syrup 2:1 sugar", 15, "ml", "syrup-2-1"],
  ["45 ml grapefrui juice", 45, "ml", "grapefruit-juice"],
  ["gin 45 ml", 45, "ml", "gin-43"],
  ["Gin 43 % – 45 ml", 45, "ml", "gin-43"],
  ["lemon juice: ¾ oz", 0.75, "oz", "lemon-juice"],
  ["vodka 1 1/2 oz", 1.5, "oz", "vodka-40"],
];

test.each(SURE)("%s", (typed, value, unit, id) => {
  const read = readIngredientLine(typed, CUPBOARD);
  expect(read).toMatchObject({ ok: true, value: { amount: { value, unit } } });
  expect(read.ok && read.value.match.sure?.id).toBe(id);
});

const ASKED: readonly [string, readonly string[]][] = [
  ["45 ml rum", ["white-rum-40", "aged-rum-40", "pot-still-rum-57"]],
  ["20 ml vermouth", ["dry-vermouth-18", "sweet-vermouth-16"]],
  ["20 ml sugar syrup", ["syrup-1-1", "syrup-2-1"]],
  ["15 ml orange", ["orange-liqueur-40", "orange-juice"]],
  ["45 ml lemmon juice", ["lemon-juice"]],
  ["45 ml lemno juice", ["lemon-juice"]],
  ["45 ml vodak", ["vodka-40"]],
  ["45 ml gim", ["gin-43"]],
  ["45 ml brendy", ["brandy-40"]],
];

test.each(ASKED)("%s is asked about", (typed, ids) => {
  const read = readIngredientLine(typed, CUPBOARD);
  if (!read.ok) throw new Error(read.refusal);
  const { sure, candidates } = read.value.match;
  expect(candidates.slice(0, ids.length).map(({ id }) => id)).toEqual(
    expect.arrayContaining([...ids]),
  );
  expect(sure).toBeUndefined();
});

test.each(["30 ml lemon verbena", "30 ml quince", "10 ml xyz 123", "5 ml mead", "5 ml da"])(
  "%s is not in the cupboard",
  (typed) => {
    const read = readIngredientLine(typed, CUPBOARD);
    expect(read).toMatchObject({ ok: true, value: { match: { candidates: [] } } });
    expect(read.ok && read.value.named).toBe(typed.replace(/^\d+ ml /u, ""));
  },
);

const REFUSED: readonly [string, string][] = [
  ["", "amount-empty"],
  ["lemon juice", "amount-without-number"],
  ["45 lemon juice", "amount-unknown-unit"],
  ["45 ml", "line-without-ingredient"],
  ["45 ml of", "line-without-ingredient"],
  ["45 ml …!", "line-without-ingredient"],
  ["0 ml gin", "amount-not-positive"],
  ["45", "amount-without-unit"],
];

test.each(REFUSED)("%j is refused: %s", (typed, refusal) => {
  expect(readIngredientLine(typed, CUPBOARD)).toMatchObject({ ok: false, refusal });
});

test("never throws, and a line that reads has a name and an amount", () => {
  const piece = fc.oneof(
    fc.string({ unit: "binary", maxLength: 12 }),
    fc.constantFrom(" ", "45 ml", "½", "gin", "-", ":", "1 1/2 oz", "lemon juice", "of"),
  );
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 6 }), (pieces) => {
      const read = readIngredientLine(pieces.join(" "), CUPBOARD);
      if (!read.ok) return;
      expect(read.value.amount.value).toBeGreaterThan(0);
      expect(foldedWords(read.value.named).length).toBeGreaterThan(0);
    }),
    { numRuns: 300 },
  );
});

test("what joins an amount to its name is no part of the name, in three languages", () => {
  const read = (text: string) => {
    const line = readIngredientLine(text, CUPBOARD, "1 000,5");
    return line.ok ? line.value.named : line.refusal;
  };
  expect([
    read("22,5 ml of gin"),
    read("22,5 ml de gin"),
    read("22,5 ml del gin"),
    read("22,5 ml d’orange"),
    read("22,5 ml d'orange"),
    read("22,5 ml delicious"),
  ]).toEqual(["gin", "gin", "gin", "orange", "orange", "delicious"]);
});
