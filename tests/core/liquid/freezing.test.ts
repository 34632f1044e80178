import fc from "fast-check";
import { expect, test } from "vitest";
import { freezesAt, freezingPoint, iceFraction, stateAt } from "../../../core/liquid/freezing.ts";
import { ETHANOL_FREEZING } from "../../../core/liquid/freezing-table.ts";
import { massOf, NOTHING } from "../../../core/liquid/liquid.ts";
import { waterOf } from "../../../core/liquid/mixing.ts";
import { rootBetween } from "../../../core/quantity/solve.ts";
import published from "../../published/freezing.json";
import solutes from "../../published/ternary-solutes.json";
import { anyLiquid, drink, plain } from "./any-liquid.ts";

test("sugar: CRC Handbook, to 42 %", () => {
  const { rows, tolerance } = published.sucrose;
  for (const [percent = 0, point = 0] of rows) {
    const got = freezingPoint(plain(0, 100 - percent, percent));
    expect(Math.abs(got - point), `${percent} %`).toBeLessThanOrEqual(tolerance);
  }
});

test("ethanol: the CRC rows come back, and between its neighbours each row is met", () => {
  const { rows, tolerance } = published.ethanol;
  expect(rows).toHaveLength(ETHANOL_FREEZING.length);
  for (const [percent = 0, point = 0] of rows) {
    expect(freezingPoint(plain(percent, 100 - percent))).toBeCloseTo(point, 9);
  }
  const ratio = (percent: number, point: number) => (-point * (100 - percent)) / percent;
  for (const [index, [percent = 0, point = 0]] of rows.entries()) {
    const [before, after] = [rows[index - 1], rows[index + 1]];
    if (!before || !after) continue;
    const [p0 = 0, t0 = 0] = before;
    const [p1 = 0, t1 = 0] = after;
    const at = (percent - p0) / (p1 - p0);
    const between = (1 - at) * ratio(p0, t0) + at * ratio(p1, t1);
    expect(
      Math.abs(ratio(percent, point) - between) * (percent / (100 - percent)),
    ).toBeLessThanOrEqual(tolerance);
  }
});

test("ethanol: Melinder's curve and a handbook's whole degrees", () => {
  const { coefficients, tolerance } = published.melinder;
  for (let percent = 2; percent <= 60; percent += 2) {
    const by = percent / 100 - 0.292361;
    const curve = coefficients.reduce((sum, c, power) => sum + c * by ** power, 0) - 273.15;
    const got = freezingPoint(plain(percent, 100 - percent));
    expect(Math.abs(got - curve), `${percent} %`).toBeLessThanOrEqual(tolerance);
  }
  for (const [abv = 0, point = 0] of published.byVolume.rows) {
    const within = published.byVolume.tolerance;
    expect(Math.abs(freezingPoint(drink(abv)) - point), `${abv} % vol`).toBeLessThanOrEqual(
      abv === 60 ? 2.5 : within, // the page's 60 % vol looks like the point of 50 wt%
    );
  }
});

test("acids and milk sugar: CRC Handbook, to 10 %", () => {
  for (const [name, within] of [
    ["citric", 0.03],
    ["lactic", 0.06],
    ["acetic", 0.06],
  ] as const) {
    for (const [percent, , kelvin] of solutes[name].rows) {
      if (!percent || !kelvin || percent > 10) continue;
      const got = freezingPoint({ ...plain(0, 100 - percent), acids: { [name]: percent } });
      expect(Math.abs(got + kelvin), `${percent} % ${name}`).toBeLessThanOrEqual(within);
    }
  }
  for (const [percent, , kelvin] of solutes.lactose.rows) {
    if (!percent || !kelvin) continue;
    const got = freezingPoint({ ...plain(0, 100 - percent), solids: percent });
    expect(Math.abs(got + kelvin), `${percent} % milk sugar`).toBeLessThanOrEqual(0.03);
  }
});

test("spirit and sugar, ice fractions and bottles against an independent program", () => {
  const { ternary, iceFraction: ice, bottle } = published;
  for (const [abv = 0, sugar = 0, point = 0] of ternary.rows) {
    expect(Math.abs(freezingPoint(drink(abv, sugar)) - point)).toBeLessThanOrEqual(
      ternary.tolerance,
    );
  }
  for (const [abv = 0, sugar = 0, t = 0, share = 0] of ice.rows) {
    expect(Math.abs(iceFraction(drink(abv, sugar), t) - share)).toBeLessThanOrEqual(ice.tolerance);
  }
  for (const [sugar = 0, abv = 0] of bottle.rows) {
    const got = rootBetween((x) => freezingPoint(drink(x, sugar)) + 18, 20, 40, 1e-6);
    expect(Math.abs(got - abv), `${sugar} g/L`).toBeLessThanOrEqual(bottle.tolerance);
  }
});

test("more of anything freezes later; the colder, the more ice, never more than the water", () => {
  fc.assert(
    fc.property(anyLiquid, fc.double({ min: -40, max: -1, noNaN: true }), (liquid, t) => {
      const stronger = { ...liquid, ethanol: liquid.ethanol + 10 };
      const sweeter = { ...liquid, sugar: liquid.sugar + 10 };
      expect(freezingPoint(stronger)).toBeLessThan(freezingPoint(liquid));
      expect(freezingPoint(sweeter)).toBeLessThan(freezingPoint(liquid));
      const ice = iceFraction(liquid, t);
      // Each is solved to a millionth of the water.
      expect(iceFraction(liquid, t - 1)).toBeGreaterThanOrEqual(ice - 2e-6);
      expect(ice).toBeLessThanOrEqual(liquid.water / massOf(liquid));
      expect(ice > 0).toBe(freezesAt(liquid, t));
    }),
  );
});

test("what is not frozen freezes at that temperature", () => {
  fc.assert(
    fc.property(anyLiquid, fc.double({ min: -30, max: -3, noNaN: true }), (liquid, t) => {
      const ice = iceFraction(liquid, t) * massOf(liquid);
      fc.pre(ice > 0 && liquid.ethanol + liquid.sugar > 5);
      const rest = { ...liquid, water: liquid.water - ice };
      expect(freezingPoint(rest)).toBeCloseTo(t, 1);
    }),
  );
});

test("a mole of potassium in a kilogram of water: 1.86 K (CRC Handbook, water's constant)", () => {
  expect(freezingPoint({ ...plain(0, 1000), cation: 1 })).toBeCloseTo(-1.86, 9);
});

test("water freezes whole; strong spirit goes on past the table", () => {
  expect(freezingPoint(waterOf(100))).toBe(-0);
  expect(iceFraction(waterOf(100), -1)).toBe(1);
  expect(iceFraction(waterOf(100), 0)).toBe(0);
  expect(freezingPoint(plain(80, 20))).toBeLessThan(-49.5);
});

test("textures (limits from memory of practice) and the freezer", () => {
  expect(stateAt(drink(20, 80), -6)).toBe("liquid");
  expect(stateAt(drink(12, 100), -6)).toBe("icy");
  expect(stateAt(drink(10, 100), -10)).toBe("slush");
  expect(stateAt(drink(5, 100), -18)).toBe("solid");
  expect(freezesAt(drink(33))).toBe(true);
  expect(freezesAt(drink(34))).toBe(false);
  expect(freezesAt(drink(33), -17)).toBe(false);
});

// From memory of practice: below 15 % ice a thin drink, above 60 % spoonable.
test.each([
  [0.01, "icy"],
  [0.149, "icy"],
  [0.151, "slush"],
  [0.599, "slush"],
  [0.601, "solid"],
] as const)("with %s of ice it is %s", (share, texture) => {
  const slush = drink(10, 100);
  const at = rootBetween((t) => iceFraction(slush, t) - share, -40, -3, 1e-9);
  expect(stateAt(slush, at)).toBe(texture);
});

test("refuses a liquid without water", () => {
  expect(() => freezingPoint(NOTHING)).toThrow("a freezing point needs water, got 0 g");
  expect(() => iceFraction(plain(10, 0), -5)).toThrow(RangeError);
});
