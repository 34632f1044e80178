import fc from "fast-check";
import { expect, test } from "vitest";
import { liquidOf } from "../../../core/liquid/compose.ts";
import { LABEL_TOLERANCE, strengthInterval } from "../../../core/liquid/interval.ts";
import { NOTHING, strengthOf } from "../../../core/liquid/liquid.ts";
import { mix, portion, waterOf } from "../../../core/liquid/mixing.ts";
import { anyLiquid } from "./any-liquid.ts";

const spirit = (volume: number, strength: number) =>
  liquidOf({ volume, strength, sugarPerLitre: 0, acids: {}, cation: 0, solidsPerLitre: 0 });

test("one bottle: the label's tolerance alone", () => {
  const { strength, low, high } = strengthInterval([
    { liquid: spirit(700, 0.4), volumeWithin: 5, strengthWithin: LABEL_TOLERANCE },
  ]);
  expect(strength).toBeCloseTo(0.4, 9);
  expect(high - strength).toBeCloseTo(0.003, 5);
  expect(strength - low).toBeCloseTo(0.003, 5);
});

test("50 ml of 40 % with 50 ml of water, by hand: (50 x 0.4)/100 and its slopes", () => {
  const { strength, high } = strengthInterval([
    { liquid: spirit(50, 0.4), volumeWithin: 1, strengthWithin: 0.003 },
    { liquid: waterOf(50), volumeWithin: 1, strengthWithin: 0 },
  ]);
  expect(strength).toBeCloseTo(0.2, 3);
  // Slopes of V1 s/(V1 + V2): 0.002 and -0.002 per ml, 0.5 per unit of strength.
  expect(high - strength).toBeCloseTo(Math.hypot(0.002, 0.002, 0.0015), 4);
});

test("agrees with trying the pours out", () => {
  const rum = spirit(60, 0.57);
  const juice = waterOf(30);
  const pours = [
    { liquid: rum, volumeWithin: 2, strengthWithin: 0 },
    { liquid: juice, volumeWithin: 0, strengthWithin: 0 },
  ];
  const { strength, low, high } = strengthInterval(pours);
  const more = strengthOf(mix([portion(rum, 62), juice]));
  const less = strengthOf(mix([portion(rum, 58), juice]));
  expect(high - low).toBeCloseTo(more - less, 4);
  expect(strength).toBeCloseTo(strengthOf(mix([rum, juice])), 12);
});

test("wider tolerances never narrow the range, exact pours have none", () => {
  const off = fc.double({ min: 0, max: 5, noNaN: true });
  fc.assert(
    fc.property(fc.array(anyLiquid, { minLength: 1, maxLength: 4 }), off, off, (liquids, a, b) => {
      const with_ = (ml: number) =>
        strengthInterval(
          liquids.map((liquid) => ({ liquid, volumeWithin: ml, strengthWithin: 0.003 })),
        );
      const [narrow, wide] = [with_(Math.min(a, b)), with_(Math.max(a, b))];
      expect(wide.high - wide.low).toBeGreaterThanOrEqual(narrow.high - narrow.low - 1e-12);
      const exact = strengthInterval(
        liquids.map((liquid) => ({ liquid, volumeWithin: 0, strengthWithin: 0 })),
      );
      expect(exact.low).toBe(exact.high);
    }),
  );
});

test("sugar and pure alcohol have no water to step with; agrees with a weaker bottle", () => {
  const exact = { volumeWithin: 0, strengthWithin: 0 };
  const rest = [{ ...NOTHING, sugar: 50 }, waterOf(100)];
  const { strength, high } = strengthInterval([
    ...rest.map((liquid) => ({ liquid, ...exact })),
    { liquid: spirit(100, 1), volumeWithin: 0, strengthWithin: 0.003 },
  ]);
  const weaker = strengthOf(mix([...rest, spirit(100, 0.997)]));
  expect((high - strength) / (strength - weaker)).toBeCloseTo(1, 1);
});

test("stays within 0 and 1, and an empty mixture is 0", () => {
  const wild = strengthInterval([
    { liquid: spirit(10, 0.05), volumeWithin: 5, strengthWithin: 0.5 },
  ]);
  expect(wild.low).toBe(0);
  expect(strengthInterval([])).toEqual({ strength: 0, low: 0, high: 0 });
  const one = { liquid: NOTHING, volumeWithin: 1, strengthWithin: 0.003 };
  expect(strengthInterval([one])).toEqual({ strength: 0, low: 0, high: 0 });
});
