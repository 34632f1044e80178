import fc from "fast-check";
import { expect, test } from "vitest";
import { liquidOf } from "../../../core/liquid/compose.ts";
import { ETHANOL_DENSITY } from "../../../core/liquid/ethanol-water.ts";
import { freezingPoint } from "../../../core/liquid/freezing.ts";
import { massOf, NOTHING, strengthOf, volumeOf } from "../../../core/liquid/liquid.ts";
import { portion } from "../../../core/liquid/mixing.ts";
import { servePour } from "../../../core/spec/serve.ts";
import { SERVE_METHODS, type ServeMethod } from "../../../core/spec/spec.ts";
import { anyLiquid } from "../liquid/any-liquid.ts";

const drink = (strength: number) =>
  liquidOf({
    volume: 90,
    strength,
    sugarPerLitre: 70,
    acids: { citric: 6 },
    cation: 0,
    solidsPerLitre: 10,
  });

const serve = (method: ServeMethod, dilution?: number) => ({
  pour: 90,
  method,
  glass: "",
  garnish: "",
  ...(dilution === undefined ? {} : { dilution }),
});

// ice_dilution.json, published fit (from memory there): stirred -1.21 x² + 1.246 x + 0.145, shaken
// -1.567 x² + 1.742 x + 0.203, water per volume with x the strength before.
test.each([
  ["stirred", 0.2, 0.3458],
  ["stirred", 0.3, 0.4099],
  ["shaken", 0.2, 0.4887],
  ["shaken", 0.3, 0.5846],
] as const)("%s at %s takes up %s of its volume in water", (method, strength, share) => {
  expect(servePour(drink(strength), serve(method)).waterAdded / 90).toBeCloseTo(share, 3);
});

// By hand: 90 ml at 20 % with a quarter of water are 112.5 ml at 16 %, less a little contraction.
test.each(["stirred", "shaken", "over-ice", "straight"] as const)(
  "%s, the house's own dilution counts before any model",
  (method) => {
    const { waterAdded, liquid, ice } = servePour(drink(0.2), serve(method, 0.25));
    expect(waterAdded).toBeCloseTo(22.5, 9);
    expect(strengthOf(liquid)).toBeCloseTo(0.16, 3);
    expect(ice).toBe(0);
  },
);

test("from the fridge without ice it stays what it was, at 4 degrees", () => {
  const served = servePour(drink(0.2), serve("straight"));
  expect([served.waterAdded, served.temperature, served.ice]).toEqual([0, 4, 0]);
  expect(massOf(served.liquid)).toBeCloseTo(massOf(drink(0.2)), 9);
});

test("over ice takes up less than stirring; both are colder than they came", () => {
  const [over, stirred] = (["over-ice", "stirred"] as const).map((m) =>
    servePour(drink(0.2), serve(m)),
  );
  expect(over?.waterAdded).toBeCloseTo(0.12 * 90, 9);
  expect(over?.waterAdded).toBeLessThan(stirred?.waterAdded ?? 0);
  expect(stirred?.temperature).toBeLessThan(4);
});

// LIQUIDS.md: slush is about 30 to 45 % ice (from memory). 1.1 g of ice per ml at 12 % is slush.
test("blended, the ice is drunk too: all of it counts as water, part of it is still ice", () => {
  const served = servePour(drink(0.12), serve("blended"));
  expect(served.waterAdded).toBeCloseTo((1.1 * 90) / 0.9982, 3);
  expect(served.ice).toBeGreaterThan(0.3);
  expect(served.ice).toBeLessThan(0.6);
  const own = servePour(drink(0.12), serve("blended", 0.5));
  expect(own.waterAdded).toBeCloseTo(45, 9);
  expect(own.ice).toBeLessThan(served.ice);
});

test("what holds no water at all is served as it is, and nothing throws", () => {
  const pure = { ...NOTHING, ethanol: (50 * ETHANOL_DENSITY) / 1000 };
  const sugar = { ...NOTHING, sugar: 50 };
  for (const pour of [pure, sugar]) {
    for (const method of SERVE_METHODS) {
      const { liquid } = servePour(pour, serve(method, 0));
      expect(massOf(liquid)).toBeCloseTo(massOf(pour), 9);
    }
  }
});

test("property: water only thins, and nothing is colder than it would freeze", () => {
  fc.assert(
    fc.property(anyLiquid, fc.constantFrom(...SERVE_METHODS), (liquid, method) => {
      const pour = portion(liquid, 90);
      const served = servePour(pour, serve(method));
      expect(served.waterAdded).toBeGreaterThanOrEqual(0);
      expect(served.liquid.ethanol).toBeCloseTo(pour.ethanol, 9);
      expect(volumeOf(served.liquid)).toBeGreaterThan(89);
      expect(served.ice).toBeGreaterThanOrEqual(0);
      expect(served.ice).toBeLessThan(1);
      if (served.ice === 0) {
        expect(served.temperature).toBeGreaterThanOrEqual(freezingPoint(served.liquid) - 1e-6);
      }
    }),
  );
});
