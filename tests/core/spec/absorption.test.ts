import fc from "fast-check";
import { expect, test } from "vitest";
import { liquidOf } from "../../../core/liquid/compose.ts";
import { strengthOf, sugarPerLitre, volumeOf } from "../../../core/liquid/liquid.ts";
import { infusionLeft, strained } from "../../../core/spec/absorption.ts";
import { ABSORPTIONS } from "../../../core/spec/absorption-table.ts";
import published from "../../published/absorption.json";
import {
  cupboardWith,
  dryOf,
  lineOf,
  must,
  PUNCH,
  planFor,
  unwashed,
} from "../../support/world/punch-spec.ts";
import { anyLiquid } from "../liquid/any-liquid.ts";

const spirit = (volume: number, strength: number) =>
  liquidOf({ volume, strength, sugarPerLitre: 0, acids: {}, cation: 0, solidsPerLitre: 0 });

test("the table is what the notes give", () => {
  const { rows } = published.kept;
  expect(Object.keys(ABSORPTIONS)).toEqual(rows.map(({ botanical }) => botanical));
  expect(Object.values(ABSORPTIONS)).toEqual(
    rows.map(({ usual, low, high }) => ({ usual, low, high })),
  );
});

// 80 g x 2.1 ml = 168 ml kept, 2.0 to 2.5: 160 to 200 ml, by hand.
test("80 g of coffee in a litre of 40 %: 832 ml, 800 to 840, as strong as before", () => {
  const left = must(infusionLeft(spirit(1000, 0.4), [{ g: 80, absorbs: ABSORPTIONS.coffee }]));
  expect(left.kept).toBeCloseTo(168, 9);
  expect(left.volume).toBeCloseTo(832, 6);
  expect([left.low, left.high].map((ml) => Math.round(ml))).toEqual([800, 840]);
  expect(left.strength).toBeCloseTo(0.4, 9);
});

/** g per g: 0.8 to 0.9, from memory. Drained, the fruit keeps about as much liquid. */
const SOFT_FRUIT_WATER = 0.85;
const FRUIT = { usual: SOFT_FRUIT_WATER, low: SOFT_FRUIT_WATER, high: SOFT_FRUIT_WATER };

for (const { grams, spiritMl, percent, endsAt } of published.fruit.rows) {
  test(`${grams} g of berries in ${spiritMl} ml of ${percent} % end at ${endsAt} %`, () => {
    const left = must(
      infusionLeft(spirit(spiritMl, percent / 100), [
        { g: grams, absorbs: FRUIT, waterShare: SOFT_FRUIT_WATER },
      ]),
    );
    expect(Math.abs(100 * left.strength - endsAt)).toBeLessThan(0.2);
    // Drained fruit keeps about what it gave: the notes say net near nothing.
    expect(Math.abs(left.volume - spiritMl)).toBeLessThan(0.02 * spiritMl);
  });

  test(`and so they do in a planned batch`, () => {
    const berries = dryOf("berries", {
      waterShare: SOFT_FRUIT_WATER,
      absorbs: SOFT_FRUIT_WATER,
      sweetness: { as: "g/L", value: 0 },
    });
    const lines = [lineOf("vodka-40", spiritMl), lineOf("berries", grams, "g")];
    const plan = planFor(
      unwashed({ ...PUNCH, lines }),
      { by: "stock", ingredientId: "vodka-40", amount: { value: spiritMl, unit: "ml" } },
      cupboardWith(berries),
    );
    expect(Math.abs(100 * strengthOf(plan.final) - endsAt)).toBeLessThan(0.2);
    expect(Math.abs(plan.finalMl - spiritMl)).toBeLessThan(0.02 * spiritMl);
  });
}

test("straining takes volume and nothing else", () => {
  fc.assert(
    fc.property(anyLiquid, fc.double({ min: 0, max: 0.99, noNaN: true }), (liquid, share) => {
      const volume = volumeOf(liquid);
      const left = must(strained(liquid, share * volume));
      expect(volumeOf(left)).toBeCloseTo(volume * (1 - share), 6);
      expect(strengthOf(left)).toBeCloseTo(strengthOf(liquid), 9);
      expect(sugarPerLitre(left)).toBeCloseTo(sugarPerLitre(liquid), 6);
    }),
  );
});

test("more fruit is weaker, more leaves are less; the range holds the usual", () => {
  const grams = fc.double({ min: 0, max: 200, noNaN: true });
  fc.assert(
    fc.property(grams, grams, (a, b) => {
      const at = (fruit: number, tea: number) =>
        must(
          infusionLeft(spirit(1000, 0.5), [
            { g: fruit, absorbs: FRUIT, waterShare: SOFT_FRUIT_WATER },
            { g: tea, absorbs: ABSORPTIONS.tea },
          ]),
        );
      const [less, more] = [Math.min(a, b), Math.max(a, b)];
      expect(at(more, 10).strength).toBeLessThanOrEqual(at(less, 10).strength + 1e-12);
      const strong = at(10, more);
      expect(strong.volume).toBeLessThanOrEqual(at(10, less).volume + 1e-9);
      expect(strong.low).toBeLessThanOrEqual(strong.volume + 1e-9);
      expect(strong.high).toBeGreaterThanOrEqual(strong.volume - 1e-9);
    }),
  );
});

test("leaves that keep everything leave nothing, and say so", () => {
  const left = infusionLeft(spirit(100, 0.4), [{ g: 50, absorbs: ABSORPTIONS.tea }]);
  expect(left).toMatchObject({ ok: false, refusal: "botanicals-keep-all", about: { kept: 150 } });
});

test("nothing kept leaves the liquid as it is", () => {
  const liquid = spirit(100, 0.4);
  expect(must(strained(liquid, 0))).toBe(liquid);
});
