import fc from "fast-check";
import { expect, test } from "vitest";
import { densityOf, NOTHING, volumeOf } from "../../../core/liquid/liquid.ts";
import { densityAt, volumeAt } from "../../../core/liquid/temperature.ts";
import ethanolWater from "../../published/ethanol-water.json";
import sucrose from "../../published/sucrose.json";
import { anyLiquid, plain } from "./any-liquid.ts";

test("spirits against NBS, 10 to 40 C", () => {
  const { rows, tolerance } = ethanolWater.nbs;
  for (const [percent = 0, t = 0, density = 0] of rows) {
    const got = densityAt(plain(percent, 100 - percent), t) / 1000;
    expect(Math.abs(got - density)).toBeLessThanOrEqual(tolerance);
  }
});

test("sugar solutions against exact values of SPS-4, to 40 C", () => {
  const rows = sucrose.exact.rows.filter(([, t = 0]) => t <= 40);
  expect(rows.length).toBeGreaterThan(10);
  for (const [w = 0, t = 0, density = 0] of rows) {
    // Water itself differs by 0.005 kg/m3 between the two standards.
    expect(Math.abs(densityAt(plain(0, 1 - w, w), t) - density)).toBeLessThanOrEqual(0.01);
  }
});

test("at 20 degrees it is the volume; colder is smaller", () => {
  fc.assert(
    fc.property(anyLiquid, fc.double({ min: 5, max: 39, noNaN: true }), (liquid, t) => {
      expect(volumeAt(liquid, 20)).toBeCloseTo(volumeOf(liquid), 9);
      expect(densityAt(liquid, 20)).toBeCloseTo(densityOf(liquid), 9);
      expect(volumeAt(liquid, t)).toBeLessThan(volumeAt(liquid, t + 1));
    }),
  );
});

test("below 0 degrees sugar keeps its volume of 0 degrees", () => {
  const sweet = plain(30, 50, 20);
  const sugarAlone = (t: number) => volumeAt(sweet, t) - volumeAt(plain(30, 50), t);
  expect(sugarAlone(-10)).toBeCloseTo(sugarAlone(0), 9);
});

test("an empty vessel, and temperatures out of range", () => {
  expect(densityAt(NOTHING, 4)).toBe(0);
  expect(() => volumeAt(plain(40, 60), -21)).toThrow(RangeError);
  expect(() => densityAt(plain(40, 60), 41)).toThrow(RangeError);
});
