import fc from "fast-check";
import { expect, test } from "vitest";
import { massOf, NOTHING, strengthOf, volumeOf } from "../../../core/liquid/liquid.ts";
import { mix, portion, scaleLiquid, waterOf } from "../../../core/liquid/mixing.ts";
import { totalAcid } from "../../../core/quantity/acid-name.ts";
import { anyLiquid, plain } from "./any-liquid.ts";

test("textbook (from memory): 50 ml ethanol and 50 ml water make 96 to 97 ml", () => {
  const both = mix([plain(0.789239 * 50, 0), waterOf(50)]);
  expect(volumeOf(both)).toBeGreaterThan(96);
  expect(volumeOf(both)).toBeLessThan(97);
});

test("mass, ethanol, sugar, acid and cation are kept, whatever the order", () => {
  fc.assert(
    fc.property(fc.array(anyLiquid, { maxLength: 6 }), (liquids) => {
      const whole = mix(liquids);
      const sum = (of: (l: (typeof liquids)[number]) => number) =>
        liquids.reduce((total, l) => total + of(l), 0);
      expect(massOf(whole)).toBeCloseTo(sum(massOf), 6);
      expect(whole.ethanol).toBeCloseTo(
        sum((l) => l.ethanol),
        6,
      );
      expect(whole.sugar).toBeCloseTo(
        sum((l) => l.sugar),
        6,
      );
      expect(totalAcid(whole.acids)).toBeCloseTo(
        sum((l) => totalAcid(l.acids)),
        6,
      );
      expect(whole.cation).toBeCloseTo(
        sum((l) => l.cation),
        9,
      );
      expect(volumeOf(mix([...liquids].reverse()))).toBeCloseTo(volumeOf(whole), 6);
    }),
  );
});

test("scaling is linear and undoes itself", () => {
  fc.assert(
    fc.property(anyLiquid, fc.double({ min: 0.01, max: 100, noNaN: true }), (liquid, factor) => {
      const scaled = scaleLiquid(liquid, factor);
      expect(volumeOf(scaled) / volumeOf(liquid)).toBeCloseTo(factor, 9);
      expect(strengthOf(scaled)).toBeCloseTo(strengthOf(liquid), 12);
      expect(massOf(scaleLiquid(scaled, 1 / factor))).toBeCloseTo(massOf(liquid), 8);
      expect(scaled.cation).toBeCloseTo(factor * liquid.cation, 9);
      expect(scaled.solids).toBeCloseTo(factor * liquid.solids, 6);
      expect(Object.keys(scaled.acids)).toEqual(Object.keys(liquid.acids));
    }),
  );
});

test("a portion has the volume asked for and the whole's strength", () => {
  fc.assert(
    fc.property(anyLiquid, fc.double({ min: 0.1, max: 5000, noNaN: true }), (liquid, ml) => {
      const pour = portion(liquid, ml);
      expect(volumeOf(pour)).toBeCloseTo(ml, 8);
      expect(strengthOf(pour)).toBeCloseTo(strengthOf(liquid), 12);
    }),
  );
});

test("nothing from nothing", () => {
  expect(mix([])).toEqual(NOTHING);
  expect(portion(NOTHING, 0)).toEqual(NOTHING);
  expect(massOf(waterOf(0))).toBe(0);
});

test("refuses what cannot be", () => {
  expect(() => portion(NOTHING, 10)).toThrow("a pour of 10 ml needs a liquid, got none");
  expect(() => portion(waterOf(10), -1)).toThrow(RangeError);
  expect(() => scaleLiquid(waterOf(10), -1)).toThrow(RangeError);
  expect(() => scaleLiquid(waterOf(10), Number.NaN)).toThrow(RangeError);
  expect(() => waterOf(-1)).toThrow(RangeError);
});
