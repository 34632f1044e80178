import fc from "fast-check";
import { expect, test } from "vitest";
import {
  blendSpirits,
  ETHANOL_DENSITY,
  ethanolWaterDensity,
  massFractionOfStrength,
  strengthOfMassFraction,
  waterToReduce,
} from "../../../core/liquid/ethanol-water.ts";
import { rootBetween } from "../../../core/quantity/solve.ts";
import published from "../../published/ethanol-water.json";
import mixing from "../../published/ethanol-water-mixing.json";
import { numbers } from "./any-liquid.ts";

const SIXTY_F = 140 / 9;
const AIR = 1.2; // kg/m3, at 20 degrees C and sea level
const BRASS = 8400; // kg/m3, the weights

/** Specific gravity in air against water at the same temperature. */
const gravityInAir = (p: number, t: number) =>
  (ethanolWaterDensity(p, t) - AIR) / (ethanolWaterDensity(0, t) - AIR);
/** Strength by volume at 60 degrees F. */
const strengthAt60 = (p: number) =>
  (p * ethanolWaterDensity(p, SIXTY_F)) / ethanolWaterDensity(1, SIXTY_F);
const fractionOfProof = (proof: number) =>
  proof === 200 ? 1 : rootBetween((p) => strengthAt60(p) - proof / 200, 0, 1, 1e-12);

/** Largest distance of a table from what we compute; a row must give a number. */
function worst<Row>(rows: readonly Row[], off: (row: Row) => number): number {
  const distances = rows.map((row) => Math.abs(off(row)));
  expect(distances.every(Number.isFinite)).toBe(true);
  expect(distances.length).toBeGreaterThan(0);
  return Math.max(...distances);
}

test.each([
  ["Perry, 20 C", published.perry, published.perry.rows.map(([w, rho]) => [w, 20, rho])],
  ["NBS, 10 to 40 C", published.nbs, published.nbs.rows],
  ["CRC, 20 C", published.crc, published.crc.rows.map(([w, rho]) => [w, 20, rho])],
])("density against %s", (_, table, rows) => {
  const off = worst(rows, (row) => {
    const [percent = Number.NaN, t = Number.NaN, density = Number.NaN] = row;
    return ethanolWaterDensity(percent / 100, t) / 1000 - density;
  });
  expect(off).toBeLessThanOrEqual(table.tolerance);
});

test("density against the OIML table by strength, and 0.01 % vol back from it", () => {
  const { rows, tolerance } = published.oimlTableIVa;
  const off = worst(rows, ([abv = Number.NaN, density = Number.NaN]) => {
    return ethanolWaterDensity(massFractionOfStrength(abv / 100)) - density;
  });
  expect(off).toBeLessThanOrEqual(tolerance);
  const offStrength = worst(rows, ([abv = Number.NaN, density = Number.NaN]) => {
    const p = rootBetween((x) => ethanolWaterDensity(x) - density, 0, 1, 1e-12);
    return 100 * strengthOfMassFraction(p) - abv;
  });
  expect(offStrength).toBeLessThanOrEqual(0.01);
});

test("USP alcoholometric table: % vol at 60 F, wt%, gravity in air", () => {
  const { rows, tolerance } = published.uspByVolume;
  const fractions = rows.map(([abv = Number.NaN]) => fractionOfProof(2 * abv));
  const offWeight = worst(rows, ([abv = Number.NaN, percent = Number.NaN]) => {
    return 100 * fractionOfProof(2 * abv) - percent;
  });
  expect(offWeight).toBeLessThanOrEqual(tolerance.wt_percent);
  const offWarm = Math.max(
    ...rows.map((row, i) => Math.abs(gravityInAir(fractions[i] ?? 0, 25) - (row[2] ?? 0))),
  );
  const offCool = Math.max(
    ...rows.map((row, i) => Math.abs(gravityInAir(fractions[i] ?? 0, SIXTY_F) - (row[3] ?? 0))),
  );
  expect(offWarm).toBeLessThanOrEqual(tolerance.sg);
  expect(offCool).toBeLessThanOrEqual(tolerance.sg);
});

test("the implementation against exact values of the formula", () => {
  const { rows, tolerance } = published.exact;
  const off = worst(rows.map(numbers), ([p = -1, t = 99, density = 0]) => {
    return ethanolWaterDensity(p, t) - density;
  });
  expect(off).toBeLessThanOrEqual(tolerance);
  const offFraction = worst(published.massFraction.rows, ([abv = -1, percent = 0]) => {
    return 100 * massFractionOfStrength(abv / 100) - percent;
  });
  expect(offFraction).toBeLessThanOrEqual(published.massFraction.tolerance);
});

test("US law: worked examples of gauging by weight at 60 F", () => {
  const { rows, tolerance, looseTolerance } = mixing.ttbGauging;
  const inAir = (density: number) => (density - AIR) / (1 - AIR / BRASS);
  const poundsPerGallon = (p: number) =>
    (inAir(ethanolWaterDensity(p, SIXTY_F)) * 3.785411784e-3) / 0.45359237;
  const proofGallons = (pounds: number, proof: number) =>
    ((pounds / poundsPerGallon(fractionOfProof(proof))) * proof) / 100;
  const close = (got: number, want: number, within = tolerance) =>
    expect(Math.abs(got / want - 1)).toBeLessThanOrEqual(within);
  close(proofGallons(1, 190), rows.proofGallonsPerPoundOf190);
  close(proofGallons(1000, 200), rows.proofGallonsIn1000PoundsOf200);
  close(1000 / fractionOfProof(190) - 1000, rows.poundsOfWaterFrom200To190);
  close(1 / poundsPerGallon(0), rows.gallonsPerPoundOfWater);
  close(poundsPerGallon(1), rows.poundsPerGallonOf200);
  close(gravityInAir(1, SIXTY_F), rows.specificGravityOf200);
  close(proofGallons(321.5, 86), rows["proofGallonsIn321.5PoundsOf86"], looseTolerance);
});

test("US law: parts of water in spirit of a proof, and reducing it", () => {
  const { rows, reductions, tolerance } = mixing.ttbTable6;
  const density = (proof: number) => ethanolWaterDensity(fractionOfProof(proof), SIXTY_F);
  const parts = (proof: number) => (100 * density(proof) - (proof / 2) * density(200)) / density(0);
  for (const { proof, partsWater } of rows) {
    expect(Math.abs(parts(proof) - partsWater)).toBeLessThanOrEqual(tolerance);
  }
  for (const { from, to, gallonsWater } of reductions) {
    const water = (((100 * from) / to) * density(to) - 100 * density(from)) / density(0);
    expect(Math.abs(water - gallonsWater)).toBeLessThanOrEqual(tolerance);
  }
});

test("UK and US proof spirit", () => {
  const fiftyOneF = (51 - 32) / 1.8;
  const p = rootBetween(
    (x) => ethanolWaterDensity(x, fiftyOneF) - (12 / 13) * ethanolWaterDensity(0, fiftyOneF),
    0,
    1,
    1e-12,
  );
  const within = (value: number, [low = 0, high = 0]: readonly number[]) => {
    expect(value).toBeGreaterThanOrEqual(low);
    expect(value).toBeLessThanOrEqual(high);
  };
  within(100 * strengthAt60(p), mixing.ukProof.rows.abv60F);
  within(100 * p, mixing.ukProof.rows.weightPercent);
  expect(100 * strengthOfMassFraction(p)).toBeCloseTo(mixing.ukProof.rows.abv20C, 2);
  const us = ethanolWaterDensity(fractionOfProof(100), SIXTY_F) / ethanolWaterDensity(0, SIXTY_F);
  expect(us).toBeCloseTo(mixing.usProof.rows.specificGravity[1] ?? 0, 5);
});

test("contraction and reduction against an independent program", () => {
  const { contraction, reduction } = mixing;
  const offVolume = worst(contraction.rows, ([a = 0, sa = 0, b = 0, sb = 0, total = 0]) => {
    const blend = blendSpirits([
      { volume: a, strength: sa / 100 },
      { volume: b, strength: sb / 100 },
    ]);
    return blend.volume - total;
  });
  expect(offVolume).toBeLessThanOrEqual(contraction.tolerance);
  const offStrength = worst(contraction.rows, ([a = 0, sa = 0, b = 0, sb = 0, _ = 0, abv = 0]) => {
    const blend = blendSpirits([
      { volume: a, strength: sa / 100 },
      { volume: b, strength: sb / 100 },
    ]);
    return 100 * blend.strength - abv;
  });
  expect(offStrength).toBeLessThanOrEqual(1e-4);
  const offWater = worst(reduction.rows, ([from = 0, to = 0, water = 0]) => {
    return waterToReduce(100, from / 100, to / 100) - water;
  });
  expect(offWater).toBeLessThanOrEqual(reduction.tolerance);
});

const strength = fc.double({ min: 0, max: 1, noNaN: true });

test("strength to mass fraction and back, within 1e-12", () => {
  fc.assert(
    fc.property(strength, (abv) => {
      expect(Math.abs(strengthOfMassFraction(massFractionOfStrength(abv)) - abv)).toBeLessThan(
        1e-12,
      );
    }),
  );
  expect(massFractionOfStrength(0)).toBe(0);
  expect(massFractionOfStrength(1)).toBeCloseTo(1, 14);
});

test("strength grows with the mass fraction, density falls with warmth", () => {
  fc.assert(
    fc.property(strength, fc.double({ min: 10, max: 39, noNaN: true }), (p, t) => {
      const q = p * 0.999;
      if (p > 1e-6) expect(strengthOfMassFraction(p)).toBeGreaterThan(strengthOfMassFraction(q));
      expect(ethanolWaterDensity(p, t + 1)).toBeLessThan(ethanolWaterDensity(p, t));
    }),
  );
});

test("reducing agrees with blending, and blending keeps the ethanol", () => {
  const volume = fc.double({ min: 1, max: 5000, noNaN: true });
  const diluted = fc.double({ min: 0.01, max: 1, noNaN: true });
  fc.assert(
    fc.property(volume, diluted, diluted, (ml, a, b) => {
      const [to, from] = [Math.min(a, b), Math.max(a, b)];
      const water = waterToReduce(ml, from, to);
      const blend = blendSpirits([
        { volume: ml, strength: from },
        { volume: water, strength: 0 },
      ]);
      expect(blend.strength).toBeCloseTo(to, 10);
      expect(blend.volume * blend.strength).toBeCloseTo(ml * from, 6);
      // Weak spirit let down grows, by 0.15 % at most (28 % to 10 % vol): so says the OIML formula.
      expect(blend.volume).toBeLessThanOrEqual((ml + water) * 1.0016);
    }),
  );
});

test("pure ethanol, nothing poured", () => {
  expect(ETHANOL_DENSITY).toBeCloseTo(789.239, 2);
  expect(blendSpirits([])).toEqual({ volume: 0, strength: 0 });
  expect(blendSpirits([{ volume: 0, strength: 0.4 }])).toEqual({ volume: 0, strength: 0 });
});

test("refuses what cannot be", () => {
  for (const p of [-0.001, 1.001, Number.NaN]) {
    expect(() => ethanolWaterDensity(p)).toThrow(RangeError);
    expect(() => massFractionOfStrength(p)).toThrow(RangeError);
    expect(() => blendSpirits([{ volume: 1, strength: p }])).toThrow(RangeError);
  }
  for (const t of [-20.1, 40.1, Number.NaN]) {
    expect(() => ethanolWaterDensity(0.5, t)).toThrow(RangeError);
  }
  expect(() => waterToReduce(100, 0.4, 0.5)).toThrow("at most 0.4, got 0.5");
  expect(() => waterToReduce(100, 0.4, 0)).toThrow(RangeError);
  expect(() => waterToReduce(-1, 0.4, 0.3)).toThrow(RangeError);
  expect(() => blendSpirits([{ volume: -1, strength: 0.4 }])).toThrow(RangeError);
});
