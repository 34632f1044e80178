import fc from "fast-check";
import { expect, test } from "vitest";
import { freezingPoint } from "../../../core/liquid/freezing.ts";
import { heatCapacityOf, heatLeft, mixingHeatOf } from "../../../core/liquid/heat.ts";
import { massOf, NOTHING } from "../../../core/liquid/liquid.ts";
import { waterOf } from "../../../core/liquid/mixing.ts";
import { ETHANOL_MOLAR_MASS, WATER_MOLAR_MASS } from "../../../core/quantity/molar-mass-table.ts";
import published from "../../published/ice.json";
import { anyLiquid, drink, plain } from "./any-liquid.ts";

test("heat capacity at 5 degrees against an independent program", () => {
  for (const [abv = 0, capacity = 0] of published.heatCapacity.rows) {
    const spirit = drink(abv, 0);
    const got = heatCapacityOf(spirit, 5) / massOf(spirit);
    expect(Math.abs(got - capacity)).toBeLessThanOrEqual(published.heatCapacity.tolerance);
  }
});

test("heat of mixing: a textbook's worked example, and the minimum (from memory)", () => {
  const { ethanolMol, waterMol, joule, tolerance } = published.mixingHeat;
  const moles = (ethanol: number, water: number) =>
    plain(ethanol * ETHANOL_MOLAR_MASS, water * WATER_MOLAR_MASS);
  const got = mixingHeatOf(moles(ethanolMol, waterMol), 25);
  expect(Math.abs(got / joule - 1)).toBeLessThanOrEqual(tolerance);
  expect(mixingHeatOf(moles(0.15, 0.85), 25)).toBeCloseTo(-780, 0);
  expect(mixingHeatOf(moles(1, 0), 25)).toBe(0);
  expect(mixingHeatOf(waterOf(100), 25)).toBe(0);
});

test("the balance without heat of mixing against an independent program", () => {
  for (const [abv = 0, , water = 0] of published.balance.rows) {
    const before = drink(abv, 60);
    const melted = waterOf(1000 * water).water;
    const after = { ...before, water: before.water + melted };
    const end = freezingPoint(after);
    const meeting = { drink: before, temperature: 22, ice: melted, iceTemperature: 0 };
    const mixing = mixingHeatOf(before, end) - mixingHeatOf(after, end);
    // A thousandth of a litre of ice is 340 J; the balance moves by half as much again.
    expect(Math.abs(heatLeft(meeting, melted, end) - mixing)).toBeLessThan(500);
  }
});

test("ice at 0 degrees in water: 4.2 J a degree against 333.55 J a gram", () => {
  const meeting = { drink: plain(0, 1000), temperature: 20, ice: 300, iceTemperature: 0 };
  expect(heatLeft(meeting, 0, 20)).toBeCloseTo(-300 * 2.09 * 20, 6);
  expect(heatLeft(meeting, 300, 0) / (1000 * 4.2 * 20 - 300 * 333.55)).toBeCloseTo(1, 1);
});

test("colder ends leave more heat, more melting less; heat grows with the amount", () => {
  fc.assert(
    fc.property(anyLiquid, fc.double({ min: 1, max: 300, noNaN: true }), (liquid, ice) => {
      const meeting = { drink: liquid, temperature: 20, ice, iceTemperature: -10 };
      expect(heatLeft(meeting, ice, -5)).toBeGreaterThan(heatLeft(meeting, ice, 0));
      expect(heatLeft(meeting, ice / 2, 0)).toBeGreaterThan(heatLeft(meeting, ice, 0));
      const twice = { ...liquid, ethanol: 2 * liquid.ethanol, water: 2 * liquid.water };
      expect(mixingHeatOf(twice, 5)).toBeCloseTo(2 * mixingHeatOf(liquid, 5), 6);
      expect(mixingHeatOf(liquid, 0)).toBeLessThanOrEqual(mixingHeatOf(liquid, 25));
    }),
  );
});

test("strong spirit and an empty vessel", () => {
  expect(heatCapacityOf(plain(100, 0), 5)).toBeCloseTo(240, 9);
  const steps = [0.55, 0.6, 0.65, 0.8, 1].map((p) => heatCapacityOf(plain(p, 1 - p), 5));
  expect(steps).toEqual([...steps].sort((a, b) => b - a));
  expect(heatCapacityOf(NOTHING, 5)).toBe(0);
  expect(heatCapacityOf(plain(0, 0, 100), 5)).toBeCloseTo(124.4, 9);
});
