import { expect, test } from "vitest";
import { molarOf } from "../../../core/acid/molar.ts";
import { ACID_NAMES } from "../../../core/quantity/acid-name.ts";
import { ACID_MOLAR_MASS } from "../../../core/quantity/molar-mass-table.ts";

/** Standard atomic weights, abridged (IUPAC 2021, from memory), g per mol. */
const [C, H, O, P] = [12.011, 1.008, 15.999, 30.974];

test.each([
  ["citric", 6 * C + 8 * H + 7 * O],
  ["malic", 4 * C + 6 * H + 5 * O],
  ["tartaric", 4 * C + 6 * H + 6 * O],
  ["lactic", 3 * C + 6 * H + 3 * O],
  ["acetic", 2 * C + 4 * H + 2 * O],
  ["phosphoric", 3 * H + P + 4 * O],
] as const)("%s acid weighs what its atoms do", (name, mass) => {
  expect(Math.abs(ACID_MOLAR_MASS[name] - mass)).toBeLessThan(0.0015);
  expect(molarOf({ [name]: mass })[name]).toBeCloseTo(1, 4);
});

test("grams become mol per litre, and what is not there is none", () => {
  expect(molarOf({ malic: 13.4087 }, 2).malic).toBeCloseTo(0.05, 9);
  expect(Object.values(molarOf({}))).toEqual(ACID_NAMES.map(() => 0));
});

test("what cannot be is refused in a sentence", () => {
  expect(() => molarOf({ lactic: -3 })).toThrow("lactic acid in g");
  expect(() => molarOf({ citric: Number.NaN })).toThrow(RangeError);
});
