import fc from "fast-check";
import { expect, test } from "vitest";
import { DAIRY_KINDS } from "../../../core/acid/dairy-kind-table.ts";
import { liquidOf } from "../../../core/liquid/compose.ts";
import { massOf, strengthOf, volumeOf } from "../../../core/liquid/liquid.ts";
import { clearOf, serumOf, throughFilter, type Wash, wheyOf } from "../../../core/spec/wash.ts";
import { anyLiquid } from "../liquid/any-liquid.ts";

const punchOf = (ml: number, strength: number) =>
  liquidOf({
    volume: ml,
    strength,
    sugarPerLitre: 80,
    acids: { citric: 10 },
    cation: 0.007,
    solidsPerLitre: 0,
  });

// DAIRY.md and dairy_wash_practice.json, rows 'abv' and 'volume', computed rules of thumb:
// ABV_out = ABV V / (V + 0.945 V_milk); V_out = V + V_milk (1 - 0.055 - k) - 20 ml per filter.
test.each([
  [4000, 0.25, 1000, 1, 4575],
  [4000, 0.25, 1000, 2, 4555],
  [1000, 0.15, 500, 1, 1277.5],
  [2000, 0.3, 250, 4, 2068.75],
])(
  "%s ml at %s v/v on %s ml of whole milk through %s filters",
  (ml, strength, milk, filters, out) => {
    const wash: Wash = { punch: punchOf(ml, strength), dairy: "whole", milk };
    const through = throughFilter(wash, 0.35, 20 * filters);
    expect(Math.abs(through / out - 1)).toBeLessThan(0.006);
    const thumb = (strength * ml) / (ml + 0.945 * milk);
    expect(Math.abs(strengthOf(clearOf(wash, through)) - thumb)).toBeLessThan(0.002);
  },
);

// DAIRY.md: lactose adds about 10 g/L of sugar-like solids at 1:4, minerals and whey protein a little.
test("milk leaves about 10 g/L of milk sugar in the drink", () => {
  const wash: Wash = { punch: punchOf(4000, 0.25), dairy: "whole", milk: 1000 };
  const serum = serumOf(wash);
  const perLitre = (1000 * serum.solids) / volumeOf(serum);
  expect(perLitre).toBeGreaterThan(9);
  expect(perLitre).toBeLessThan(14);
});

// USDA Handbook 8 (1976) in dairy-table.ts: whole milk 906.4 g of water and 48.4 g of milk sugar a litre.
test("whey is the milk's water and what is dissolved in it", () => {
  const whey = wheyOf("whole", 500);
  expect(whey.water).toBeCloseTo(453.2, 9);
  expect(whey.solids).toBeCloseTo((48.4 + 14.7) / 2, 9);
  expect([whey.ethanol, whey.sugar]).toEqual([0, 0]);
  expect(massOf(wheyOf("cream", 0))).toBe(0);
});

const anyWash = fc.record({
  punch: anyLiquid,
  dairy: fc.constantFrom(...DAIRY_KINDS),
  milk: fc.double({ min: 1, max: 1000, noNaN: true }),
});

test("property: more kept, less through; never below nothing, never more than was poured", () => {
  const kept = fc.double({ min: 0, max: 2, noNaN: true });
  fc.assert(
    fc.property(anyWash, kept, kept, fc.nat({ max: 2000 }), (wash, a, b, filters) => {
      const [less, more] = [Math.min(a, b), Math.max(a, b)];
      const through = throughFilter(wash, more, filters);
      expect(through).toBeGreaterThanOrEqual(0);
      expect(through).toBeLessThanOrEqual(throughFilter(wash, less, filters));
      expect(throughFilter(wash, 0, 0)).toBeLessThan(volumeOf(wash.punch) + wash.milk + 1e-9);
    }),
  );
});

test("property: what comes through is the clear liquid, at any volume", () => {
  fc.assert(
    fc.property(anyWash, fc.double({ min: 1, max: 5000, noNaN: true }), (wash, ml) => {
      const clear = clearOf(wash, ml);
      expect(volumeOf(clear) / ml).toBeCloseTo(1, 9);
      expect(strengthOf(clear)).toBeCloseTo(strengthOf(serumOf(wash)), 12);
    }),
  );
});

test("a curd that keeps everything lets nothing through", () => {
  const wash: Wash = { punch: punchOf(100, 0.2), dairy: "whole", milk: 100 };
  expect(throughFilter(wash, 0.35, 5000)).toBe(0);
  expect(massOf(clearOf(wash, 0))).toBe(0);
});
