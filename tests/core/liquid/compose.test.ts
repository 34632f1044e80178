import fc from "fast-check";
import { expect, test } from "vitest";
import { liquidOf, liquidOfMass, type Makeup } from "../../../core/liquid/compose.ts";
import {
  acidPerLitre,
  densityOf,
  massOf,
  NOTHING,
  strengthOf,
  sugarPerLitre,
  volumeOf,
} from "../../../core/liquid/liquid.ts";
import published from "../../published/ternary.json";

const PLAIN: Makeup = { strength: 0, sugarPerLitre: 0, acids: {}, cation: 0, solidsPerLitre: 0 };

test("liqueurs by strength and sugar against an independent program", () => {
  const { rows, tolerance } = published.byVolume;
  for (const [abv = 0, sugar = 0, density = 0, water = 0] of rows) {
    const liquid = liquidOf({ ...PLAIN, volume: 1000, strength: abv / 100, sugarPerLitre: sugar });
    expect(Math.abs(densityOf(liquid) - density)).toBeLessThanOrEqual(tolerance);
    expect(Math.abs(liquid.water - water)).toBeLessThanOrEqual(tolerance);
  }
});

const makeup = fc.record({
  strength: fc.double({ min: 0, max: 0.6, noNaN: true }),
  sugarPerLitre: fc.double({ min: 0, max: 400, noNaN: true }),
  acids: fc.record({ citric: fc.double({ min: 0, max: 60, noNaN: true }) }),
  cation: fc.double({ min: 0, max: 0.1, noNaN: true }),
  solidsPerLitre: fc.double({ min: 0, max: 60, noNaN: true }),
});
const amount = fc.double({ min: 1, max: 20_000, noNaN: true });

test("composing, then measuring, gives back what was asked", () => {
  fc.assert(
    fc.property(makeup, amount, (asked, volume) => {
      const liquid = liquidOf({ ...asked, volume });
      expect(volumeOf(liquid) / volume).toBeCloseTo(1, 8);
      expect(strengthOf(liquid)).toBeCloseTo(asked.strength, 8);
      expect(sugarPerLitre(liquid)).toBeCloseTo(asked.sugarPerLitre, 5);
      expect(acidPerLitre(liquid)).toBeCloseTo(asked.acids.citric, 5);
      expect((1000 * liquid.cation) / volume).toBeCloseTo(asked.cation, 9);
      expect((1000 * liquid.solids) / volume).toBeCloseTo(asked.solidsPerLitre, 6);
    }),
  );
});

test("by mass: the same liquid, that many grams", () => {
  fc.assert(
    fc.property(makeup, amount, (asked, mass) => {
      const liquid = liquidOfMass({ ...asked, mass });
      expect(massOf(liquid) / mass).toBeCloseTo(1, 10);
      expect(strengthOf(liquid)).toBeCloseTo(asked.strength, 8);
    }),
  );
});

test("a measured density decides the mass; the model's own changes nothing", () => {
  fc.assert(
    fc.property(makeup, (asked) => {
      const modelled = liquidOf({ ...asked, volume: 1000 });
      const measured = liquidOf({ ...asked, volume: 1000, density: densityOf(modelled) });
      expect(measured.water).toBeCloseTo(modelled.water, 5);
      const heavier = liquidOf({ ...asked, volume: 1000, density: densityOf(modelled) + 3 });
      expect(massOf(heavier)).toBeCloseTo(massOf(modelled) + 3, 5);
    }),
  );
});

test("the ends: nothing, pure ethanol, pure water", () => {
  expect(liquidOf({ ...PLAIN, volume: 0 })).toEqual(NOTHING);
  expect(massOf(liquidOfMass({ ...PLAIN, mass: 0 }))).toBe(0);
  expect(liquidOf({ ...PLAIN, volume: 100, strength: 1 }).water).toBe(0);
  expect(liquidOf({ ...PLAIN, volume: 1000 }).water).toBeCloseTo(998.201, 2);
});

test.each<[string, Partial<Makeup> & { volume?: number }, string]>([
  ["more than fits", { strength: 0.9, sugarPerLitre: 400 }, "must fit into 1000 ml"],
  ["more sugar than a litre", { sugarPerLitre: 1900 }, "must fit into 1000 ml"],
  ["a strength above 1", { strength: 40 }, "strength (v/v) must lie between 0 and 1, got 40"],
  ["negative acid", { acids: { citric: -1 } }, "citric acid in g per litre"],
  ["negative sugar", { sugarPerLitre: -1 }, "sugar in g per litre"],
  ["negative solids", { solidsPerLitre: -1 }, "solids in g per litre"],
  ["negative cation", { cation: -1 }, "cation in mol per litre"],
  ["a negative volume", { volume: -1 }, "a volume in ml"],
  ["a density for feathers", { density: 100, sugarPerLitre: 200 }, "leave room for water"],
  ["a density far off", { density: 1200 }, "must fit what is dissolved"],
  // 5 % off and more is a slip of the pen: 998.2 kg/m3 / 0.95 is 1050.7.
  ["a density a little too far off", { density: 1052 }, "must fit what is dissolved"],
])("refuses %s", (_, wrong, message) => {
  expect(() => liquidOf({ ...PLAIN, volume: 1000, ...wrong })).toThrow(RangeError);
  expect(() => liquidOf({ ...PLAIN, volume: 1000, ...wrong })).toThrow(message);
});

test("refuses a negative mass", () => {
  expect(() => liquidOfMass({ ...PLAIN, mass: -1 })).toThrow("a mass in g");
});

test("a density just within 5 % is believed", () => {
  expect(massOf(liquidOf({ ...PLAIN, volume: 1000, density: 1046 }))).toBeCloseTo(1046, 9);
});
