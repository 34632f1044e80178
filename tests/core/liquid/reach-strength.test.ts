import fc from "fast-check";
import { expect, test } from "vitest";
import { liquidOf } from "../../../core/liquid/compose.ts";
import { NOTHING, strengthOf, volumeOf } from "../../../core/liquid/liquid.ts";
import { mix, portion, waterOf } from "../../../core/liquid/mixing.ts";
import { type Addition, spiritToReach, waterToReach } from "../../../core/liquid/reach-strength.ts";
import type { Result } from "../../../core/quantity/result.ts";
import mixing from "../../published/ethanol-water-mixing.json";

const drink = (volume: number, strength: number, sugarPerLitre = 0) =>
  liquidOf({ volume, strength, sugarPerLitre, acids: {}, cation: 0, solidsPerLitre: 0 });

function poured(result: Result<Addition, string>): Addition {
  if (!result.ok) throw new RangeError(`expected an addition, got ${result.refusal}`);
  return result.value;
}

test("water to reduce spirit against an independent program", () => {
  const { rows, tolerance } = mixing.reduction;
  for (const [from = 0, to = 0, water = 0] of rows) {
    const { volume } = poured(waterToReach(drink(100, from / 100), to / 100));
    expect(Math.abs(volume - water)).toBeLessThanOrEqual(tolerance);
  }
});

const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });
const base = fc
  .record({
    volume: fc.double({ min: 10, max: 10_000, noNaN: true }),
    strength: fc.double({ min: 0, max: 0.3, noNaN: true }),
    sugar: fc.double({ min: 0, max: 250, noNaN: true }),
  })
  .map(({ volume, strength, sugar }) => drink(volume, strength, sugar));

test("pouring the spirit that was asked for gives the strength that was asked for", () => {
  fc.assert(
    fc.property(base, fc.double({ min: 0.38, max: 0.96, noNaN: true }), share, (b, proof, at) => {
      const spirit = drink(700, proof);
      const from = strengthOf(b);
      const target = from + at * (strengthOf(spirit) - from);
      const { volume, liquid } = poured(spiritToReach(b, spirit, target));
      expect(strengthOf(liquid)).toBeCloseTo(target, 9);
      expect(strengthOf(mix([b, portion(spirit, volume)]))).toBeCloseTo(target, 9);
      expect(volumeOf(liquid)).toBeLessThanOrEqual((volumeOf(b) + volume) * 1.0016);
    }),
  );
});

test("only the spirit's composition counts, not how much there is", () => {
  const b = drink(1000, 0.12, 90);
  const { volume } = poured(spiritToReach(b, drink(1, 0.57), 0.2));
  expect(poured(spiritToReach(b, drink(700, 0.57), 0.2)).volume).toBeCloseTo(volume, 6);
});

test("water gives the strength that was asked for, sugar or not", () => {
  fc.assert(
    fc.property(base, share, (b, at) => {
      fc.pre(strengthOf(b) > 0.01);
      const target = at * strengthOf(b);
      const { volume, liquid } = poured(waterToReach(b, target));
      expect(strengthOf(liquid)).toBeCloseTo(target, 9);
      expect(volumeOf(mix([b, waterOf(volume)]))).toBeCloseTo(volumeOf(liquid), 5);
    }),
  );
});

test("nothing to pour when the strength is there already", () => {
  const b = drink(1000, 0.2);
  expect(poured(spiritToReach(b, drink(1, 0.4), strengthOf(b))).volume).toBe(0);
  expect(poured(waterToReach(b, strengthOf(b))).volume).toBe(0);
});

test("refusals carry the nearest strength", () => {
  const b = drink(1000, 0.2);
  const above = spiritToReach(b, drink(700, 0.4), 0.45);
  expect(above).toMatchObject({
    ok: false,
    refusal: "target-above-spirit",
    about: { target: 0.45 },
  });
  expect(above.ok ? 0 : above.about.nearest).toBeCloseTo(0.4, 9);
  const weaker = spiritToReach(b, drink(700, 0.15), 0.3);
  expect(weaker.ok ? 0 : weaker.about.nearest).toBeCloseTo(0.2, 9);
  const below = spiritToReach(b, drink(700, 0.4), 0.1);
  expect(below).toMatchObject({ ok: false, refusal: "target-below-base" });
  expect(below.ok ? 0 : below.about.nearest).toBeCloseTo(0.2, 9);
  const stronger = waterToReach(b, 0.3);
  expect(stronger).toMatchObject({ ok: false, refusal: "target-above-base" });
  expect(stronger.ok ? 0 : stronger.about.nearest).toBeCloseTo(0.2, 9);
  expect(waterToReach(b, 0)).toMatchObject({ ok: false, refusal: "target-zero" });
});

test("throws on what only we can ask", () => {
  expect(() => spiritToReach(NOTHING, drink(1, 0.4), 0.2)).toThrow("the base must hold something");
  expect(() => waterToReach(NOTHING, 0.2)).toThrow(RangeError);
  expect(() => spiritToReach(drink(1, 0.1), drink(1, 0.4), 20)).toThrow(RangeError);
  expect(() => waterToReach(drink(1, 0.1), Number.NaN)).toThrow(RangeError);
});
