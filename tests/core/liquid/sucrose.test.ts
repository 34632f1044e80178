import fc from "fast-check";
import { expect, test } from "vitest";
import {
  brixOfDensity,
  brixOfGramsPerLitre,
  gramsPerLitreOfBrix,
  sucroseApparentVolume,
  sucroseDensity,
  sucroseSolubility,
  waterDensity,
} from "../../../core/liquid/sucrose.ts";
import published from "../../published/sucrose.json";

const AIR = 1.2; // kg/m3

/** True density, g/mL, from the apparent specific gravity 20/20 that is weighed in air. */
const trueDensity = (gravity: number) => (AIR + gravity * (waterDensity(20) - AIR)) / 1000;

test("CRC Handbook, density at 20 C", () => {
  for (const [percent = 0, density = 0] of published.crc.rows) {
    const within = percent <= 50 ? 1.6e-4 : percent <= 70 ? 3e-4 : 8.5e-4;
    const off = sucroseDensity(percent / 100) / 1000 - density;
    expect(Math.abs(off), `${percent} %`).toBeLessThanOrEqual(within);
  }
});

const circular = (brix: number) =>
  brix <= 55 ? 1.6e-4 : brix <= 70 ? 3.6e-4 : brix <= 85 ? 6e-4 : 1.3e-3;

test("NBS Circular C440, table 114, apparent gravity turned into true density", () => {
  expect(published.nbsC440.rows).toHaveLength(96);
  for (const [brix = 0, gravity = 0] of published.nbsC440.rows) {
    const off = sucroseDensity(brix / 100) / 1000 - trueDensity(gravity);
    expect(Math.abs(off), `${brix} Bx`).toBeLessThanOrEqual(circular(brix));
  }
});

test("GNU units' brix table, apparent density", () => {
  for (const [brix = 0, apparent = 0] of published.units.rows) {
    const off = sucroseDensity(brix / 100) / 1000 - trueDensity(apparent / 0.99717);
    expect(Math.abs(off), `${brix} Bx`).toBeLessThanOrEqual(circular(brix));
  }
});

test("solubility against Mohos", () => {
  for (const [t = 0, per100 = 0] of published.solubility.rows) {
    const off = sucroseSolubility(t) - per100 / (100 + per100);
    expect(Math.abs(off), `${t} C`).toBeLessThanOrEqual(published.solubility.tolerance);
  }
});

test("the implementation against exact values of the formula", () => {
  for (const [w = 0, t = 0, density = 0] of published.exact.rows) {
    const off = Math.abs(sucroseDensity(w, t) - density);
    expect(off).toBeLessThanOrEqual(published.exact.tolerance);
  }
});

const brixes = fc.oneof(fc.constant(0), fc.double({ min: 1e-6, max: 100, noNaN: true }));

test("brix to g/L and back, brix to density and back", () => {
  fc.assert(
    fc.property(brixes, (brix) => {
      expect(brixOfGramsPerLitre(gramsPerLitreOfBrix(brix))).toBeCloseTo(brix, 7);
      expect(brixOfDensity(sucroseDensity(brix / 100))).toBeCloseTo(brix, 7);
    }),
  );
});

test("the apparent volume gives the density back, and is steady down to no sugar", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1e-6, max: 0.9, noNaN: true }),
      fc.integer({ min: 0, max: 60 }),
      (w, t) => {
        const ratio = w / (1 - w);
        const volume = 1000 / waterDensity(t) + ratio * sucroseApparentVolume(ratio, t);
        expect((1000 * (1 + ratio)) / volume).toBeCloseTo(sucroseDensity(w, t), 6);
      },
    ),
  );
  expect(sucroseApparentVolume(0)).toBeCloseTo(sucroseApparentVolume(1e-9), 8);
  expect(sucroseApparentVolume(Number.POSITIVE_INFINITY)).toBeCloseTo(1000 / sucroseDensity(1), 9);
});

test("refuses what cannot be", () => {
  for (const w of [-0.01, 1.01, Number.NaN]) {
    expect(() => sucroseDensity(w)).toThrow(RangeError);
    expect(() => gramsPerLitreOfBrix(100 * w)).toThrow(RangeError);
  }
  for (const t of [-1, 101, Number.NaN]) {
    expect(() => waterDensity(t)).toThrow(RangeError);
    expect(() => sucroseDensity(0.5, t)).toThrow(RangeError);
    expect(() => sucroseSolubility(t)).toThrow(RangeError);
  }
  expect(() => brixOfGramsPerLitre(2000)).toThrow(RangeError);
  expect(() => brixOfDensity(998)).toThrow(RangeError);
  expect(() => sucroseApparentVolume(-0.1)).toThrow(RangeError);
});
