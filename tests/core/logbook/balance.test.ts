import { expect, test } from "vitest";
import { acidPerLitre, NOTHING, strengthOf, sugarPerLitre } from "../../../core/liquid/liquid.ts";
import { balanceIn } from "../../../core/logbook/balance.ts";

const punch = { ...NOTHING, ethanol: 150, water: 780, sugar: 60, acids: { citric: 6 } };

test("strength, sugar and acid of a liquid, whatever its amount; sugar per acid by mass", () => {
  const found = balanceIn(punch);
  expect(found).toEqual({
    strength: strengthOf(punch),
    sugar: sugarPerLitre(punch),
    acid: acidPerLitre(punch),
    ratio: 10,
  });
  const twice = { ...punch, ethanol: 300, water: 1560, sugar: 120, acids: { citric: 12 } };
  expect(balanceIn(twice).strength).toBeCloseTo(found.strength, 12);
  expect(balanceIn(twice).ratio).toBeCloseTo(10, 12);
});

test("without acid there is no ratio", () => {
  expect(balanceIn({ ...punch, acids: {} })).not.toHaveProperty("ratio");
});
