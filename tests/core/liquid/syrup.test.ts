import fc from "fast-check";
import { expect, test } from "vitest";
import { massOf } from "../../../core/liquid/liquid.ts";
import { waterOf } from "../../../core/liquid/mixing.ts";
import { brixOfDensity } from "../../../core/liquid/sucrose.ts";
import {
  crystallisesAt,
  honeySyrup,
  syrupByVolume,
  syrupByWeight,
} from "../../../core/liquid/syrup.ts";
import published from "../../published/sucrose-syrups.json";

interface Parts {
  readonly sugarG?: number;
  readonly waterG?: number;
  readonly sugarMl?: number;
  readonly waterMl?: number;
  readonly bulk?: number;
}

function made({ sugarG, waterG, sugarMl, waterMl = 0, bulk }: Parts) {
  if (sugarG === undefined) return syrupByVolume(sugarMl ?? 0, waterMl, bulk);
  return syrupByWeight(sugarG, waterG ?? waterOf(waterMl).water);
}

test("bar syrups against an independent program", () => {
  const { rows, tolerance } = published;
  for (const row of rows) {
    const syrup = made(row.parts);
    const off = (got: number, want: number) => Math.abs(got - want);
    expect(off(syrup.brix, row.brix)).toBeLessThanOrEqual(tolerance.brix);
    expect(off(syrup.density / 1000, row.density_g_mL)).toBeLessThanOrEqual(tolerance.density_g_mL);
    expect(off(syrup.gramsPerLitre, row.sugar_g_per_L)).toBeLessThanOrEqual(
      tolerance.sugar_g_per_L,
    );
    expect(off(syrup.volume, row.yield_mL)).toBeLessThanOrEqual(tolerance.yield_mL);
  }
});

test("a cup of sugar is the loose one unless told", () => {
  expect(syrupByVolume(500, 500).brix).toBeCloseTo(syrupByVolume(500, 500, 0.8454).brix, 9);
});

test("a syrup keeps its mass, and a meter would read its Brix", () => {
  const mass = fc.double({ min: 1, max: 5000, noNaN: true });
  fc.assert(
    fc.property(mass, mass, (sugar, water) => {
      const syrup = syrupByWeight(sugar, water);
      expect(massOf(syrup.liquid)).toBeCloseTo(sugar + water, 9);
      expect(brixOfDensity(syrup.density)).toBeCloseTo(syrup.brix, 1);
      expect(syrup.gramsPerLitre).toBeCloseTo((1000 * sugar) / syrup.volume, 6);
    }),
  );
});

test("gum makes a gomme heavier, not sweeter", () => {
  const plain = syrupByWeight(1000, 500);
  const gomme = syrupByWeight(1000, 500, 50);
  expect(massOf(gomme.liquid)).toBe(1550);
  expect(gomme.liquid.solids).toBe(50);
  expect(gomme.brix).toBeLessThan(plain.brix);
});

test("honey syrup: 1:1 is about 40 degrees Brix (honey from memory)", () => {
  const syrup = honeySyrup(1000, 1000);
  expect(syrup.brix).toBeCloseTo(40, 9);
  expect(massOf(syrup.liquid)).toBeCloseTo(2000, 9);
  expect(syrup.density).toBeGreaterThan(1180);
  expect(syrup.density).toBeLessThan(1200);
});

test("2:1 by weight can crystallise in the fridge, 1:1 cannot", () => {
  expect(crystallisesAt(syrupByWeight(2000, 1000).liquid, 4)).toBe(true);
  expect(crystallisesAt(syrupByWeight(2000, 1000).liquid, 20)).toBe(false);
  expect(crystallisesAt(syrupByWeight(1000, 1000).liquid, 0)).toBe(false);
  expect(crystallisesAt(waterOf(100), 4)).toBe(false);
});

test("refuses what cannot be", () => {
  expect(() => syrupByWeight(-1, 100)).toThrow("sugar in g");
  expect(() => syrupByWeight(100, -1)).toThrow("water in g");
  expect(() => syrupByWeight(100, 100, -1)).toThrow("solids in g");
  expect(() => syrupByVolume(100, 100, 1.6)).toThrow("bulk density");
  expect(() => syrupByVolume(100, -1)).toThrow(RangeError);
  expect(() => honeySyrup(-1, 100)).toThrow(RangeError);
  expect(() => crystallisesAt(waterOf(1), -1)).toThrow(RangeError);
});
