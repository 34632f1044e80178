import fc from "fast-check";
import { expect, test } from "vitest";
import { type Liquid, NOTHING, strengthOf, volumeOf } from "../../../core/liquid/liquid.ts";
import { mix, scaleLiquid } from "../../../core/liquid/mixing.ts";
import { totalAcid } from "../../../core/quantity/acid-name.ts";
import { NEW_HOUSE } from "../../../core/spec/house-rules.ts";
import { portionOf } from "../../../core/spec/ingredient-liquid.ts";
import { type Plan, planSchema } from "../../../core/spec/plan.ts";
import { planBatch } from "../../../core/spec/plan-batch.ts";
import type { BatchSize, Spec } from "../../../core/spec/spec.ts";
import { serumOf } from "../../../core/spec/wash.ts";
import { anySize, anySpec, anyWashedSpec } from "../../support/world/any-spec.ts";
import { cupboardWith, lineOf, must, PUNCH, planFor } from "../../support/world/punch-spec.ts";

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
  // Two that differ by a percent at least: any two doubles are mostly next to nothing.
  const shares = fc
    .uniqueArray(fc.integer({ min: 0, max: 90 }), { minLength: 2, maxLength: 2 })
    .map(([a = 0, b = 0]) => [Math.min(a, b) / 100, Math.max(a, b) / 100] as const);
  fc.assert(
    fc.property(
      shares,
      fc.constantFrom("brandy-40", "neutral-96", "gin-43"),
      ([less, more], spirit) => {
        const strength = (held: number) => {
          const lines = [lineOf(spirit, 40, "ml", held), ...PUNCH.lines.slice(1)];
          return strengthOf(planFor({ ...PUNCH, lines }, LITRES_5).mixed);
        };
        expect(strength(more)).toBeLessThan(strength(less));
      },
    ),
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
