import fc from "fast-check";
import { liquidOf } from "../../../core/liquid/compose.ts";
import type { Liquid } from "../../../core/liquid/liquid.ts";

const mass = (max: number) => fc.double({ min: 0, max, noNaN: true });

/** Drinks as they come: up to two kilograms, from water to strong and sweet, sour or not. */
export const anyLiquid: fc.Arbitrary<Liquid> = fc.record({
  ethanol: mass(600),
  water: fc.double({ min: 100, max: 1000, noNaN: true }),
  sugar: mass(500),
  acids: fc.oneof(
    fc.constant({}),
    fc.record({ citric: mass(60), malic: mass(20) }),
    fc.record({ lactic: mass(20) }),
  ),
  cation: mass(0.1),
  solids: mass(60),
});

/** A litre of ethanol, water and sugar by its label: % vol and g per litre. */
export const drink = (abvPercent: number, sugarPerLitre = 0): Liquid =>
  liquidOf({
    volume: 1000,
    strength: abvPercent / 100,
    sugarPerLitre,
    acids: {},
    cation: 0,
    solidsPerLitre: 0,
  });

/** Nothing but ethanol, water and sugar. */
export const plain = (ethanol: number, water: number, sugar = 0): Liquid => ({
  ethanol,
  water,
  sugar,
  acids: {},
  cation: 0,
  solids: 0,
});

/** Pairs the columns of a published table with the numbers of a row. */
export function numbers(row: readonly (number | null)[]): number[] {
  return row.map((value) => {
    if (value === null) throw new RangeError("a published row must hold numbers, got null");
    return value;
  });
}
