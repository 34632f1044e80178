import fc from "fast-check";
import { expect, test } from "vitest";
import { liquidOf } from "../../../core/liquid/compose.ts";
import { freezingPoint } from "../../../core/liquid/freezing.ts";
import { heatLeft } from "../../../core/liquid/heat.ts";
import {
  blendWithIce,
  chillOnIce,
  preDilute,
  shakeOnIce,
  stirOnIce,
} from "../../../core/liquid/ice.ts";
import { massOf, NOTHING, strengthOf, volumeOf } from "../../../core/liquid/liquid.ts";
import { waterOf } from "../../../core/liquid/mixing.ts";
import published from "../../published/ice.json";

const drink = (volume: number, abvPercent: number, sugarPerLitre = 60) =>
  liquidOf({
    volume,
    strength: abvPercent / 100,
    sugarPerLitre,
    acids: {},
    cation: 0,
    solidsPerLitre: 0,
  });

test("stirred and shaken: the published fit", () => {
  const { rows, tolerance } = published.fit;
  for (const [abv = 0, stirred = 0, shaken = 0] of rows) {
    const before = drink(100, abv);
    expect(Math.abs(stirOnIce(before).waterAdded / 100 - stirred)).toBeLessThanOrEqual(tolerance);
    expect(Math.abs(shakeOnIce(before).waterAdded / 100 - shaken)).toBeLessThanOrEqual(tolerance);
  }
});

test("heat balance against an independent program, which mixes warmer than the textbook", () => {
  const { rows, tolerance } = published.balance;
  for (const [abv = 0, water = 0, , fromCold = 0] of rows) {
    const got = chillOnIce(drink(1000, abv), 22).waterAdded / 1000;
    expect(Math.abs(got - water), `${abv} %`).toBeLessThanOrEqual(tolerance.withMixing);
    const cold = chillOnIce(drink(1000, abv), 4).waterAdded / 1000;
    expect(Math.abs(cold - fromCold), `${abv} % from 4 C`).toBeLessThanOrEqual(
      tolerance.withMixing,
    );
  }
});

test("the shaken fit lies 0.07 to 0.11 volumes above the balance, 15 to 35 %", () => {
  for (const abv of [15, 20, 25, 30, 35]) {
    const before = drink(1000, abv);
    const above = (shakeOnIce(before).waterAdded - chillOnIce(before, 22).waterAdded) / 1000;
    expect(above).toBeGreaterThanOrEqual(0.07);
    expect(above).toBeLessThanOrEqual(0.115);
  }
});

const before = fc
  .record({
    volume: fc.double({ min: 50, max: 1000, noNaN: true }),
    abv: fc.double({ min: 0, max: 50, noNaN: true }),
    sugar: fc.double({ min: 0, max: 200, noNaN: true }),
  })
  .map(({ volume, abv, sugar }) => drink(volume, abv, sugar));
const warm = fc.double({ min: 2, max: 35, noNaN: true });

test("every way adds the water it says, keeps the ethanol and chills", () => {
  fc.assert(
    fc.property(before, warm, (liquid, t) => {
      for (const served of [
        stirOnIce(liquid, t),
        shakeOnIce(liquid, t),
        chillOnIce(liquid, t),
        blendWithIce(liquid, 100, t, -18),
        preDilute(liquid, 20, t),
      ]) {
        expect(massOf(served.liquid)).toBeCloseTo(
          massOf(liquid) + waterOf(served.waterAdded).water,
          6,
        );
        expect(served.liquid.ethanol).toBe(liquid.ethanol);
        expect(served.temperature).toBeLessThanOrEqual(t);
        expect(strengthOf(served.liquid)).toBeLessThanOrEqual(strengthOf(liquid));
        expect(served.ice).toBeGreaterThanOrEqual(0);
        expect(served.ice).toBeLessThan(1);
      }
    }),
  );
});

test("the balance holds, at the freezing point of the diluted drink", () => {
  fc.assert(
    fc.property(before, warm, (liquid, t) => {
      const served = chillOnIce(liquid, t);
      const melted = waterOf(served.waterAdded).water;
      const meeting = { drink: liquid, temperature: t, ice: melted, iceTemperature: 0 };
      expect(Math.abs(heatLeft(meeting, melted, served.temperature))).toBeLessThan(1);
      expect(served.temperature).toBeCloseTo(freezingPoint(served.liquid), 6);
    }),
  );
});

test("the blender's balance holds, whether ice is left or not", () => {
  const perDrink = fc.double({ min: 0.05, max: 3, noNaN: true });
  fc.assert(
    fc.property(before, warm, perDrink, (liquid, t, per) => {
      const grams = per * massOf(liquid);
      const served = blendWithIce(liquid, grams, t, -15);
      const left = served.ice * massOf(served.liquid);
      const meeting = { drink: liquid, temperature: t, ice: grams, iceTemperature: -15 };
      expect(Math.abs(heatLeft(meeting, grams - left, served.temperature))).toBeLessThan(1);
      const unfrozen = { ...served.liquid, water: served.liquid.water - left };
      if (left > 1e-3) expect(served.temperature).toBeCloseTo(freezingPoint(unfrozen), 5);
      else expect(served.temperature).toBeGreaterThanOrEqual(freezingPoint(unfrozen) - 1e-6);
    }),
  );
});

test("water and ice by hand: 20 C x 4.19 against 333.55 J/g", () => {
  const served = blendWithIce(waterOf(1000), 500, 20);
  expect(served.temperature).toBeCloseTo(0, 6);
  expect(served.ice).toBeCloseTo((500 - (998.2 * 4.19 * 20) / 333.55) / 1498.2, 2);
  expect(blendWithIce(waterOf(1000), 100, 20).ice).toBe(0);
  expect(blendWithIce(waterOf(1000), 100, 20).temperature).toBeCloseTo(10.6, 0);
});

test("cold ice dilutes less, much of it less still; a drink colder than ice is left alone", () => {
  const sour = drink(100, 20);
  const wet = chillOnIce(sour, 22).waterAdded;
  const dry = chillOnIce(sour, 22, { temperature: -18 }).waterAdded;
  const dryAndMuch = chillOnIce(sour, 22, { temperature: -18, mass: 150 }).waterAdded;
  expect(dry).toBeLessThan(wet);
  expect(dryAndMuch).toBeLessThan(dry);
  const few = chillOnIce(sour, 22, { temperature: 0, mass: 20 });
  expect(few.waterAdded).toBeCloseTo(20 / 0.9982, 3);
  expect(few.temperature).toBeGreaterThan(0);
  const frozen = chillOnIce(drink(100, 40), -28);
  expect(frozen).toMatchObject({ waterAdded: 0, temperature: -28 });
  const deep = chillOnIce(drink(100, 20), -5, { temperature: -30, mass: 100 });
  expect(deep.waterAdded).toBe(0);
  expect(deep.temperature).toBeCloseTo(freezingPoint(drink(100, 20)), 9);
});

test("stirring stops above the freezing point, and 50 % and more count as 50 %", () => {
  const stirred = stirOnIce(drink(100, 30));
  expect(stirred.temperature).toBeGreaterThan(freezingPoint(stirred.liquid));
  expect(stirred.temperature).toBeLessThan(0);
  expect(stirOnIce(drink(100, 60, 0)).waterAdded).toBeCloseTo(
    stirOnIce(drink(100, 50, 0)).waterAdded,
    6,
  );
});

test("pre-diluted bottles say whether they freeze", () => {
  const bottle = preDilute(drink(700, 35), 150, -18);
  expect(volumeOf(bottle.liquid)).toBeLessThan(850);
  expect(bottle.ice).toBeGreaterThan(0.05);
  expect(preDilute(drink(700, 35), 150, -5).ice).toBe(0);
});

test("refuses what cannot be", () => {
  expect(() => chillOnIce(drink(100, 20), 22, { temperature: 1 })).toThrow(RangeError);
  expect(() => blendWithIce(drink(100, 20), -1)).toThrow("the mass of ice in g");
  expect(() => blendWithIce(drink(100, 20), 10, 22, 5)).toThrow(RangeError);
  expect(() => preDilute(drink(100, 20), -1, 4)).toThrow(RangeError);
  expect(() => chillOnIce(NOTHING)).toThrow("needs water");
});
