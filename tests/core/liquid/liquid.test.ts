import fc from "fast-check";
import { expect, test } from "vitest";
import {
  acidPerLitre,
  brixOf,
  densityOf,
  massOf,
  NOTHING,
  solutesVolume,
  strengthOf,
  sugarPerLitre,
  sugarToAcid,
  volumeOf,
} from "../../../core/liquid/liquid.ts";
import { sucroseDensity } from "../../../core/liquid/sucrose.ts";
import published from "../../published/ternary.json";
import solutes from "../../published/ternary-solutes.json";
import { anyLiquid, plain } from "./any-liquid.ts";

test("beer: density from the brewing relation", () => {
  for (const [ethanol = 0, extract = 0, density = 0] of published.brewing.rows) {
    const got = densityOf(plain(ethanol, 100 - ethanol - extract, extract)) / 1000;
    expect(Math.abs(got - density), `${ethanol} and ${extract}`).toBeLessThanOrEqual(
      published.brewing.tolerance,
    );
  }
});

test("US law: how far 0.1 g of sugar in 100 ml lowers the proof a hydrometer shows", () => {
  for (const [proof = 0, degrees = 0] of published.obscuration.rows) {
    const step = 0.1;
    const ethanol = (proof / 200) * 789.239;
    const spirit = (strength: number) => {
      // Water that makes 1000 ml with that much ethanol, by halving.
      let [low, high] = [0, 1000];
      for (let turn = 0; turn < 60; turn += 1) {
        const middle = (low + high) / 2;
        if (volumeOf(plain(ethanol * strength, middle)) > 1000) high = middle;
        else low = middle;
      }
      return plain(ethanol * strength, low);
    };
    const clean = spirit(1);
    const sweet = { ...clean, sugar: 1, water: clean.water - 0.62 };
    const perProof = (densityOf(spirit(1 - step)) - densityOf(clean)) / (step * proof);
    const shown = (densityOf(sweet) - densityOf(clean)) / perProof;
    expect(Math.abs(shown - degrees), `${proof} proof`).toBeLessThanOrEqual(
      published.obscuration.tolerance,
    );
  }
});

test("the model against an independent program", () => {
  for (const [ethanol = 0, sugar = 0, density = 0] of published.byMass.rows) {
    const got = densityOf(plain(ethanol, 100 - ethanol - sugar, sugar));
    expect(Math.abs(got - density)).toBeLessThanOrEqual(published.byMass.tolerance);
  }
});

// One volume per gram for every concentration: its drift with it shows beyond 10 %.
const within = { to10: 4e-4, to24: 2.2e-3 };

test.each(["citric", "lactic", "acetic"] as const)("CRC Handbook: density of %s acid", (name) => {
  for (const [percent, density] of solutes[name].rows) {
    if (!percent || !density || percent > 24) continue;
    const liquid = { ...plain(0, 100 - percent), acids: { [name]: percent } };
    expect(Math.abs(densityOf(liquid) / 1000 - density), `${percent} %`).toBeLessThanOrEqual(
      percent <= 10 ? within.to10 : within.to24,
    );
  }
});

test("CRC Handbook: density of milk sugar, fruit sugars counted as sucrose", () => {
  for (const [percent, density] of solutes.lactose.rows) {
    const got = densityOf({ ...plain(0, 100 - (percent ?? 0)), solids: percent ?? 0 }) / 1000;
    expect(Math.abs(got - (density ?? 0)), `${percent} %`).toBeLessThanOrEqual(within.to10);
  }
  for (const sugar of [solutes.glucose, solutes.fructose]) {
    for (const [percent, density] of sugar.rows) {
      const off = sucroseDensity((percent ?? 0) / 100) / 1000 - (density ?? 0);
      expect(Math.abs(off), `${percent} %`).toBeLessThanOrEqual(8e-3);
    }
  }
});

test("what the figures are made of", () => {
  const liquid = {
    ethanol: 100,
    water: 700,
    sugar: 150,
    acids: { citric: 20, malic: 5 },
    cation: 0.01,
    solids: 25,
  };
  expect(massOf(liquid)).toBe(1000);
  expect(brixOf(liquid)).toBe(15);
  expect(sugarToAcid(liquid)).toBe(6);
  expect(solutesVolume(liquid)).toBeCloseTo(20 * 0.597 + 5 * 0.61 + 25 * 0.606, 9);
  expect(densityOf(liquid)).toBeCloseTo(1e6 / volumeOf(liquid), 9);
  expect(sugarPerLitre(liquid)).toBeCloseTo(150_000 / volumeOf(liquid), 9);
  expect(acidPerLitre(liquid)).toBeCloseTo(25_000 / volumeOf(liquid), 9);
  expect(strengthOf(liquid)).toBeCloseTo(126.704 / volumeOf(liquid), 5);
});

test("an empty vessel has no figures, and no acid no ratio", () => {
  for (const of of [massOf, volumeOf, densityOf, strengthOf, brixOf, sugarPerLitre, acidPerLitre]) {
    expect(of(NOTHING)).toBe(0);
  }
  expect(sugarToAcid(NOTHING)).toBeNull();
  expect(volumeOf(plain(0, 0, 100))).toBeGreaterThan(60);
});

test("strength falls and volume grows with every drop of water", () => {
  fc.assert(
    fc.property(anyLiquid, fc.double({ min: 0.1, max: 500, noNaN: true }), (liquid, water) => {
      const thinner = { ...liquid, water: liquid.water + water };
      if (liquid.ethanol > 0.01) expect(strengthOf(thinner)).toBeLessThan(strengthOf(liquid));
      expect(volumeOf(thinner)).toBeGreaterThan(volumeOf(liquid));
      expect(strengthOf(liquid)).toBeLessThanOrEqual(1);
    }),
  );
});
