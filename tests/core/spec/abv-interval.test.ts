import fc from "fast-check";
import { expect, test } from "vitest";
import { strengthOf } from "../../../core/liquid/liquid.ts";
import { abvIntervals, measureWithin } from "../../../core/spec/abv-interval.ts";
import type { Spec } from "../../../core/spec/spec.ts";
import { stagesOf } from "../../../core/spec/stages.ts";
import { LABEL_TOLERANCES } from "../../../core/spec/tolerance-table.ts";
import published from "../../published/tolerances.json";
import {
  cupboardWith,
  dryOf,
  fromCupboard,
  lineOf,
  PUNCH,
  planFor,
  unwashed,
} from "../../support/world/punch-spec.ts";

const half = (one: { low: number; high: number }) => (one.high - one.low) / 2;

for (const { ml, within } of published.measure.rows) {
  test(`a measure of ${ml} ml may be off by ${within} ml`, () => {
    expect(measureWithin(ml)).toBeCloseTo(within, 9);
  });
}

for (const { kind, percent, drink } of published.label.rows) {
  test(`a label may be off by ${percent} % vol: ${drink}`, () => {
    expect(LABEL_TOLERANCES).toMatchObject({ [kind]: percent / 100 });
  });
}

test("one bottle alone is off by its label and nothing else, however it is measured", () => {
  const spec = unwashed({ ...PUNCH, lines: [lineOf("vodka-40", 50)] });
  const { mixed, final } = abvIntervals(planFor(spec, { by: "volume", volume: 5000 }));
  expect(mixed.strength).toBeCloseTo(0.4, 9);
  expect(half(mixed)).toBeCloseTo(0.003, 6);
  expect(half(final)).toBeCloseTo(0.003, 6);
});

// By hand, volumes added: V1 = V2 = 2.5 L of 40 % and water. Slopes of V1 s / (V1 + V2): 0.5 per unit
// of strength; 0.00004 per ml of either; each measure off by 5 + 0.025 x 2500 = 67.5 ml.
test("spirit and water half and half, by hand", () => {
  const spec = unwashed({ ...PUNCH, lines: [lineOf("vodka-40", 50), lineOf("water", 50)] });
  const plan = planFor(spec, {
    by: "stock",
    ingredientId: "water",
    amount: { value: 2500, unit: "ml" },
  });
  const { mixed } = abvIntervals(plan);
  const byHand = Math.hypot(0.5 * 0.003, 0.00004 * 67.5, 0.00004 * 67.5);
  expect(Math.abs(half(mixed) / byHand - 1)).toBeLessThan(0.04);
});

test("the same bottle in punch and top-up is off once: splitting a line changes little", () => {
  const together: Spec = {
    ...PUNCH,
    lines: [lineOf("brandy-40", 40, "ml", 0.25), lineOf("lemon-juice", 20)],
  };
  const apart: Spec = {
    ...PUNCH,
    lines: [lineOf("brandy-40", 30), lineOf("brandy-40", 10, "ml", 1), lineOf("lemon-juice", 20)],
  };
  const size = { by: "volume", volume: 5000 } as const;
  const [a, b] = [together, apart].map((spec) => abvIntervals(planFor(spec, size)).final);
  expect(half(a ?? { low: 0, high: 0 })).toBeCloseTo(half(b ?? { low: 9, high: 0 }), 9);
});

test("each stage's range lies around its own strength", () => {
  const plan = planFor(PUNCH, { by: "volume", volume: 5000 });
  const { mixed, washed, final, glass } = abvIntervals(plan);
  expect(mixed.strength).toBeCloseTo(strengthOf(plan.mixed), 12);
  expect(washed?.strength).toBeCloseTo(strengthOf(plan.washed ?? plan.mixed), 12);
  expect(final.strength).toBeCloseTo(strengthOf(plan.final), 12);
  expect(glass.strength).toBeCloseTo(strengthOf(plan.served), 6);
  for (const one of [mixed, washed, final, glass]) {
    expect(half(one ?? { low: 0, high: 0 })).toBeGreaterThan(0.001);
    expect(half(one ?? { low: 0, high: 9 })).toBeLessThan(0.02);
  }
});

test("the stages of a plan carry the half-width of their strength", () => {
  const plan = planFor(PUNCH, { by: "volume", volume: 5000 });
  const { mixed, washed, final, glass } = abvIntervals(plan);
  const within = stagesOf(plan).map(({ strength }) => strength.within ?? 0);
  const halves = [mixed, washed ?? mixed, final, glass].map(half);
  expect(within.map((one) => one.toFixed(9))).toEqual(halves.map((one) => one.toFixed(9)));
});

test("a fixed top-up that meets an unknown yield is less sure than one that follows it", () => {
  const lines = [
    lineOf("pot-still-rum-57", 40, "ml", 0.5),
    lineOf("lemon-juice", 20),
    lineOf("black-tea", 60),
  ];
  const at = (topUp: Spec["topUp"]) =>
    half(
      abvIntervals(
        planFor(
          {
            ...PUNCH,
            lines,
            topUp,
            wash: { dairyId: "milk-whole", ratio: 0.5, order: "punch-into-milk", filters: 2 },
          },
          { by: "volume", volume: 5000 },
        ),
      ).final,
    );
  expect(at({ rule: "fixed" })).toBeGreaterThan(at({ rule: "proportion" }));
});

test("water measured into the glass is surer than water off the ice; a straight pour is its bottle", () => {
  const at = (serve: Partial<Spec["serve"]>) =>
    abvIntervals(
      planFor({ ...PUNCH, serve: { ...PUNCH.serve, ...serve } }, { by: "volume", volume: 5000 }),
    );
  expect(half(at({ dilution: 0.25 }).glass)).toBeLessThan(half(at({}).glass));
  const straight = at({ method: "straight" });
  expect(half(straight.glass)).toBeCloseTo(half(straight.final), 6);
});

// Wine of grapes 0.5 % vol either way: from memory of the wine rules (tolerance-table.ts).
test("a bottle of wine alone is off by half a per cent", () => {
  const spec = unwashed({ ...PUNCH, lines: [lineOf("red-wine-13", 50)] });
  expect(half(abvIntervals(planFor(spec, { by: "volume", volume: 5000 })).mixed)).toBeCloseTo(
    0.005,
    6,
  );
});

// By hand, volumes added: the glass is V s / (V + w) strong; its slopes are V / (V + w) per unit of
// strength and s_glass / (V + w) per ml of water. Ice: 0.05 of the pour either way.
test("water off the ice is off by a twentieth of the pour, by hand", () => {
  const spec = unwashed({ ...PUNCH, lines: [lineOf("vodka-40", 50), lineOf("water", 50)] });
  const plan = planFor(spec, { by: "volume", volume: 5000 });
  const { glass, final } = abvIntervals(plan);
  const all = 90 + plan.waterAdded;
  const byHand = Math.hypot((90 / all) * half(final), (glass.strength / all) * 0.05 * 90);
  expect(Math.abs(half(glass) / byHand - 1)).toBeLessThan(0.04);
});

// By hand, volumes added: the bottle is (V s + H h) / (V + H) strong, which moves by
// (s - strength) / (V + H) per ml of V. A fixed top-up meets the yield as it comes: half its range.
test("a yield that is only foreseen adds half its range, by hand", () => {
  const plan = planFor({ ...PUNCH, topUp: { rule: "fixed" } }, { by: "volume", volume: 5000 });
  const { yield: expected, washed } = plan;
  if (expected === undefined || washed === undefined) throw new RangeError("it is washed");
  const known = {
    ...plan,
    yield: { ...expected, low: expected.expected, high: expected.expected },
  };
  const added = Math.sqrt(
    half(abvIntervals(plan).final) ** 2 - half(abvIntervals(known).final) ** 2,
  );
  const per = (strengthOf(plan.final) - strengthOf(washed)) / plan.finalMl;
  const byHand = per * ((expected.high - expected.low) / 2);
  expect(Math.abs(added / byHand - 1)).toBeLessThan(0.05);
});

test("sugar, leaves and neutral alcohol are no obstacle", () => {
  const pure = fromCupboard("neutral-96", { strength: 1 });
  const leaf = dryOf("leaf", { absorbs: 3 });
  const lines = [
    lineOf("neutral-96", 30),
    lineOf("white-sugar", 10, "g"),
    lineOf("leaf", 1, "g"),
    lineOf("lemon-juice", 20),
  ];
  const plan = planFor(
    { ...PUNCH, lines },
    { by: "volume", volume: 5000 },
    cupboardWith(pure, leaf),
  );
  expect(half(abvIntervals(plan).mixed)).toBeGreaterThan(0);
});

test("a wider label never makes a narrower range", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.05, max: 0.9, noNaN: true }), (strength) => {
      const at = (kind: "spirit" | "wine") => {
        const shelf = cupboardWith(fromCupboard("brandy-40", { strength, kind }));
        return half(abvIntervals(planFor(PUNCH, { by: "volume", volume: 3000 }, shelf)).final);
      };
      expect(at("wine")).toBeGreaterThan(at("spirit"));
    }),
    { numRuns: 15 },
  );
});

test("a plan without its ingredients is a fault of ours", () => {
  const plan = planFor(PUNCH, { by: "volume", volume: 5000 });
  expect(() => abvIntervals({ ...plan, ingredients: [] })).toThrow(RangeError);
});
