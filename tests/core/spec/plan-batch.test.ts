import fc from "fast-check";
import { expect, test } from "vitest";
import { ETHANOL_DENSITY } from "../../../core/liquid/ethanol-water.ts";
import {
  type Liquid,
  massOf,
  NOTHING,
  strengthOf,
  sugarPerLitre,
  volumeOf,
} from "../../../core/liquid/liquid.ts";
import { mix, scaleLiquid } from "../../../core/liquid/mixing.ts";
import { totalAcid } from "../../../core/quantity/acid-name.ts";
import { NEW_HOUSE } from "../../../core/spec/house-rules.ts";
import { portionOf } from "../../../core/spec/ingredient-liquid.ts";
import { type Plan, planSchema } from "../../../core/spec/plan.ts";
import { planBatch } from "../../../core/spec/plan-batch.ts";
import type { BatchSize, Spec } from "../../../core/spec/spec.ts";
import { serumOf } from "../../../core/spec/wash.ts";
import { anySize, anySpec, anyWashedSpec } from "../../support/world/any-spec.ts";
import {
  cupboardWith,
  fromCupboard,
  lineOf,
  must,
  PUNCH,
  planFor,
  unwashed,
} from "../../support/world/punch-spec.ts";

const LITRES_5: BatchSize = { by: "volume", volume: 5000 };
const cupboard = cupboardWith();

/** Plans where there is a plan; a batch too small for its filters is none. */
const planned = (spec: Spec, size: BatchSize): Plan | undefined => {
  const plan = planBatch(spec, cupboard, size, NEW_HOUSE);
  return plan.ok ? plan.value : undefined;
};

const close = (a: number, b: number, within = 1e-9): void =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(within * Math.max(1, Math.abs(a), Math.abs(b)));

/** The same masses of everything. */
function same(a: Liquid, b: Liquid): void {
  close(a.ethanol, b.ethanol);
  close(a.water, b.water);
  close(a.sugar, b.sugar);
  close(totalAcid(a.acids), totalAcid(b.acids));
  close(a.cation, b.cation);
  close(a.solids, b.solids);
}

// DAIRY.md (computed rules of thumb, from published compositions): 4 L + 1 L -> 4.57 L with one
// filter; ABV_out = ABV_p V_p / (V_p + 0.945 V_m), 25 % at 1:4 -> 20.2 %.
test("4 L of punch at 25 % on 1 L of milk: about 4.57 L at 20.2 %", () => {
  const punch = fromCupboard("vodka-40", { id: "punch-25", strength: 0.25 });
  const spec: Spec = {
    ...PUNCH,
    lines: [lineOf("punch-25", 100)],
    wash: { dairyId: "milk-whole", ratio: 0.25, order: "punch-into-milk", filters: 1 },
  };
  const plan = planFor(spec, { by: "vessel", vessel: 5000 }, cupboardWith(punch));
  expect(plan.milk?.ml).toBeCloseTo(1000, 6);
  expect(plan.milk?.g).toBeCloseTo(1030, 6);
  expect(Math.abs((plan.yield?.expected ?? 0) - 4570)).toBeLessThan(15);
  expect(Math.abs(strengthOf(plan.washed ?? NOTHING) - 0.202)).toBeLessThan(0.001);
});

// OIML R 22 (1975), evaluated in the reference notes: 50 + 50 ml of ethanol and water make 96.463 ml
// at 51.83 %; 40 % vol is 33.300 % by mass.
test("ethanol and water in equal volumes shrink to 96.463 %", () => {
  const pure = fromCupboard("neutral-96", { id: "pure", strength: 1 });
  const spec = unwashed({ ...PUNCH, lines: [lineOf("pure", 50), lineOf("water", 50)] });
  const plan = planFor(spec, { by: "volume", volume: 964.63 }, cupboardWith(pure));
  for (const line of plan.lines) expect(line.before.ml).toBeCloseTo(500, 2);
  expect(strengthOf(plan.final)).toBeCloseTo(0.5183, 4);
  const spirit = planFor(unwashed({ ...PUNCH, lines: [lineOf("vodka-40", 50)] }), LITRES_5);
  expect(spirit.final.ethanol / massOf(spirit.final)).toBeCloseTo(0.333, 5);
});

// By hand: 50 °Bx is 614.8 g/L (ICUMSA SPS-4); 300 ml of it in a litre are 184.4 g, half as much in 2 L.
test("sugar by hand: 30 parts of syrup 1:1 in 100 parts of drink", () => {
  const spec = unwashed({ ...PUNCH, lines: [lineOf("syrup-1-1", 30), lineOf("water", 70)] });
  const plan = planFor(spec, LITRES_5);
  // The mixture is 0.2 ml per litre short of the sum (ICUMSA SPS-4 at 50 and 17 °Bx).
  expect(Math.abs(sugarPerLitre(plan.final) - 184.4)).toBeLessThan(0.3);
  expect(plan.lines[0]?.before.g).toBeCloseTo(0.3 * 5000 * 1.2297, -1);
});

test("a washed plan says everything a run will need", () => {
  const plan = planFor(PUNCH, LITRES_5);
  expect(plan).toMatchObject({ v: 1, spec: PUNCH, size: LITRES_5, ounce: "bar" });
  expect(plan.ingredients.map((one) => one.id)).toEqual([
    ...PUNCH.lines.map((line) => line.ingredientId),
    "milk-whole",
  ]);
  expect(plan.lines.map((line) => line.name)).toEqual([
    "Brandy 40 %",
    "Lemon juice, fresh",
    "Black tea, strong, cooled",
    "Sugar syrup 1:1 by weight",
  ]);
  expect(plan.yield).toMatchObject({ from: "common-practice", batches: 0, curdKeeps: 0.35 });
  expect(plan.heldBackMl).toBeCloseTo(10 * plan.scale, 9);
  expect(planSchema.parse(plan)).toEqual(plan);
});

test("an unwashed plan has no milk and holds nothing back, whatever its lines and its rule say", () => {
  for (const rule of [{ rule: "proportion" }, { rule: "strength", target: 0.3 }] as const) {
    const plan = planFor({ ...unwashed(), topUp: rule }, LITRES_5);
    expect([plan.milk, plan.yield, plan.washed]).toEqual([undefined, undefined, undefined]);
    expect(plan.heldBackMl).toBe(0);
    expect(plan.lines.every((line) => line.after.g === 0 && line.before.g > 0)).toBe(true);
    expect(plan.final).toEqual(plan.mixed);
  }
});

test("held-back sugar alone is not lost, though it has no volume to measure", () => {
  const spec = {
    ...PUNCH,
    lines: [lineOf("brandy-40", 40), lineOf("water", 50), lineOf("white-sugar", 20, "g", 0.5)],
  };
  const plan = planFor(spec, LITRES_5);
  expect(plan.heldBack.sugar).toBeCloseTo(10 * plan.scale, 9);
  expect(plan.lines[2]?.after.g).toBeCloseTo(10 * plan.scale, 9);
});

test("an ingredient used twice is listed once", () => {
  const spec = {
    ...PUNCH,
    lines: [lineOf("brandy-40", 40), { ...lineOf("brandy-40", 5), id: "x" }],
  };
  expect(planFor(spec, LITRES_5).ingredients.map((one) => one.id)).toEqual([
    "brandy-40",
    "milk-whole",
  ]);
});

/** What is in so much of each line, less the share of all of it that leaves and bark keep. */
function inLines(plan: Plan, part: "before" | "after"): Liquid {
  const parts = plan.lines.map((line) => {
    const ingredient = plan.ingredients.find((one) => one.id === line.ingredientId);
    if (ingredient === undefined) throw new RangeError(`no ${line.ingredientId}`);
    const { g } = line[part];
    const { liquid } = must(portionOf(ingredient, { kind: "mass", g }));
    return { liquid, kept: g * (ingredient.absorbs ?? 0) };
  });
  const whole = mix([NOTHING, ...parts.map(({ liquid }) => liquid)]);
  const kept = parts.reduce((sum, one) => sum + one.kept, 0);
  return kept === 0 ? whole : scaleLiquid(whole, 1 - kept / volumeOf(whole));
}

test("property: every gram that goes in comes out in the bottle, or stays in curd and filters", () => {
  let washed = 0;
  fc.assert(
    fc.property(anySpec, anySize, (spec, size) => {
      const plan = planned(spec, size);
      if (plan === undefined) return;
      same(inLines(plan, "before"), plan.mixed);
      same(inLines(plan, "after"), plan.heldBack);
      const { milk, yield: yielded, washed: clear } = plan;
      if (milk === undefined || yielded === undefined || clear === undefined) {
        expect(plan.final).toEqual(plan.mixed);
        return;
      }
      washed += 1;
      // Curd and filters keep the clear liquid as it is: what is not through is their share of each.
      const serum = serumOf({ punch: plan.mixed, dairy: milk.dairy, milk: milk.ml });
      const kept = volumeOf(serum) - yielded.expected;
      expect(kept).toBeGreaterThan(0);
      same(serum, mix([clear, scaleLiquid(serum, kept / volumeOf(serum))]));
      close(serum.ethanol, plan.mixed.ethanol);
      same(mix([clear, plan.heldBack]), plan.final);
    }),
    { numRuns: 100 },
  );
  expect(washed).toBeGreaterThan(20);
});

test("property: the bottle holds what was asked for", () => {
  fc.assert(
    fc.property(anySpec, anySize, (spec, size) => {
      const plan = planned(spec, size);
      if (plan === undefined) return;
      const asked = {
        serves: size.by === "serves" ? size.serves * spec.serve.pour : 0,
        bottles: size.by === "bottles" ? size.bottles * size.size : 0,
        volume: size.by === "volume" ? size.volume : 0,
      };
      const target = asked.serves + asked.bottles + asked.volume;
      close(plan.finalMl, target, 1e-6);
      close(volumeOf(plan.final), plan.finalMl);
      close(plan.servedMl, volumeOf(plan.served));
      expect(planSchema.safeParse(plan).success).toBe(true);
    }),
    { numRuns: 70 },
  );
});

test("a vat of a cubic metre is met as closely as a bottle, filters and all", () => {
  for (const volume of [700, 1_000_000]) {
    close(planFor(PUNCH, { by: "volume", volume }).finalMl, volume, 1e-8);
  }
});

test("property: scaling up and down again gives the amounts back", () => {
  fc.assert(
    fc.property(anySpec, fc.double({ min: 900, max: 9000, noNaN: true }), (spec, volume) => {
      const once = planned(spec, { by: "volume", volume });
      const more = planned(spec, { by: "volume", volume: volume * 7 });
      if (once === undefined || more === undefined) return;
      const back = planned(spec, { by: "volume", volume: more.finalMl / 7 });
      close(back?.scale ?? 0, once.scale, 1e-8);
      once.lines.forEach((line, at) => {
        close(back?.lines[at]?.before.g ?? -1, line.before.g, 1e-8);
        close(back?.lines[at]?.after.g ?? -1, line.after.g, 1e-8);
      });
      // Everything but what the filters keep is in proportion.
      const lost = (spec.wash?.filters ?? 0) * NEW_HOUSE.perFilter;
      expect(more.scale).toBeLessThanOrEqual(7 * once.scale * (1 + 1e-9));
      if (lost === 0) close(more.scale, 7 * once.scale);
    }),
    { numRuns: 100 },
  );
});

test("property: nothing is stronger than the strongest that went in", () => {
  fc.assert(
    fc.property(anySpec, anySize, (spec, size) => {
      const plan = planned(spec, size);
      if (plan === undefined) return;
      // Two of one strength, one of them sweet, still shrink together: by 0.02 % vol at most, measured.
      const strongest = Math.max(...plan.ingredients.map((one) => one.strength)) + 0.001;
      for (const liquid of [plan.mixed, plan.washed, plan.final, plan.served]) {
        expect(strengthOf(liquid ?? NOTHING)).toBeLessThanOrEqual(strongest);
      }
      expect(strengthOf(plan.served)).toBeLessThanOrEqual(strengthOf(plan.final) + 1e-12);
    }),
    { numRuns: 100 },
  );
});

test("property: the more is held back, the weaker is the punch that meets the milk", () => {
  const shares = fc.tuple(
    fc.double({ min: 0, max: 0.9, noNaN: true }),
    fc.double({ min: 0, max: 0.9, noNaN: true }),
  );
  fc.assert(
    fc.property(shares, fc.constantFrom("brandy-40", "neutral-96", "gin-43"), ([a, b], spirit) => {
      const strength = (held: number) => {
        const lines = [lineOf(spirit, 40, "ml", held), ...PUNCH.lines.slice(1)];
        return strengthOf(planFor({ ...PUNCH, lines }, LITRES_5).mixed);
      };
      const [less, more] = [Math.min(a, b), Math.max(a, b)];
      if (more - less > 1e-6) expect(strength(more)).toBeLessThan(strength(less));
    }),
    { numRuns: 40 },
  );
});

test("property: the order of the lines changes no number", () => {
  fc.assert(
    fc.property(anyWashedSpec, anySize, fc.infiniteStream(fc.nat()), (spec, size, ranks) => {
      const plan = planned(spec, size);
      const rank = new Map(spec.lines.map((line) => [line.id, ranks.next().value ?? 0]));
      const lines = [...spec.lines].sort((a, b) => (rank.get(a.id) ?? 0) - (rank.get(b.id) ?? 0));
      const other = planned({ ...spec, lines }, size);
      if (plan === undefined || other === undefined) {
        expect(other).toBe(plan);
        return;
      }
      close(other.scale, plan.scale);
      close(other.yield?.expected ?? 0, plan.yield?.expected ?? 1);
      same(other.final, plan.final);
      for (const line of plan.lines) {
        const twin = other.lines.find((one) => one.lineId === line.lineId);
        close(twin?.before.g ?? -1, line.before.g);
      }
    }),
    { numRuns: 60 },
  );
});

test("property: the interval of the yield holds what is expected", () => {
  fc.assert(
    fc.property(anyWashedSpec, anySize, (spec, size) => {
      const expected = planned(spec, size)?.yield;
      if (expected === undefined) return;
      expect(expected.low).toBeLessThan(expected.expected);
      expect(expected.expected).toBeLessThan(expected.high);
      expect(expected.high).toBeLessThan(expected.poured);
    }),
    { numRuns: 60 },
  );
});

// By hand: a target strength is a mass balance; the ethanol in the bottle over its volume.
test("a target strength is reached in the bottle, whatever is held back", () => {
  const held = [lineOf("gin-43", 30, "ml", 0.3), lineOf("dry-vermouth-18", 20, "ml", 0.5)];
  const lines = [...held, ...PUNCH.lines.slice(1), lineOf("citric-acid", 0.5, "g", 0.5)];
  for (const target of [0.14, 0.17, 0.2]) {
    const plan = planFor({ ...PUNCH, lines, topUp: { rule: "strength", target } }, LITRES_5);
    const { ethanol } = plan.final;
    expect((1000 * ethanol) / ETHANOL_DENSITY / volumeOf(plan.final)).toBeCloseTo(target, 9);
  }
});

test("a line pours after the wash what the target takes, not what was written", () => {
  const at = (target: number) =>
    planFor({ ...PUNCH, topUp: { rule: "strength", target } }, LITRES_5);
  for (const plan of [at(0.15), at(0.17)]) {
    const after = plan.lines.reduce((sum, line) => sum + line.after.ml, 0);
    close(after, plan.heldBackMl);
    // Written: a quarter of 40 ml.
    expect(Math.abs(after / plan.scale - 10)).toBeGreaterThan(0.5);
  }
});
