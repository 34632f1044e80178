import fc from "fast-check";
import { expect, test } from "vitest";
import { liquidOf } from "../../../core/liquid/compose.ts";
import { strengthOf, sugarToAcid, volumeOf } from "../../../core/liquid/liquid.ts";
import { mix } from "../../../core/liquid/mixing.ts";
import { MASS_STEPS, VOLUME_STEPS } from "../../../core/quantity/rounding.ts";
import { NEW_HOUSE } from "../../../core/spec/house-rules.ts";
import { planSchema } from "../../../core/spec/plan.ts";
import { planBatch } from "../../../core/spec/plan-batch.ts";
import { roundedPlan, type Tools } from "../../../core/spec/rounded-plan.ts";
import type { Spec } from "../../../core/spec/spec.ts";
import {
  cupboardWith,
  dryOf,
  lineOf,
  must,
  PUNCH,
  planFor,
  unwashed,
} from "../../support/world/punch-spec.ts";

const JUG: Tools = { volumeStep: 5, massStep: 1, weigh: "volumes" };
const SCALE: Tools = { volumeStep: 5, massStep: 1, weigh: "masses" };
const LINES = [...PUNCH.lines, lineOf("white-sugar", 3.3, "g"), lineOf("aromatic-bitters-44", 0.8)];
const SPEC: Spec = { ...PUNCH, lines: LINES };
const plan = planFor(SPEC, { by: "serves", serves: 23 });
const near = (value: number, step: number) => Math.abs(value / step - Math.round(value / step));

test("a jug: liquids in its steps, dry goods in the scale's, milk too", () => {
  const rounded = must(roundedPlan(plan, JUG, NEW_HOUSE)).plan;
  for (const { weighed, before, after } of rounded.lines) {
    const [step, of] = weighed ? [1, "g" as const] : [5, "ml" as const];
    expect(near(before[of], step)).toBeLessThan(1e-9);
    expect(near(after[of], step)).toBeLessThan(1e-9);
  }
  expect(near(rounded.milk?.ml ?? 0.5, 5)).toBeLessThan(1e-9);
});

test("a scale: everything in its steps, milk too", () => {
  const rounded = must(roundedPlan(plan, SCALE, NEW_HOUSE)).plan;
  for (const { before, after } of rounded.lines) {
    expect(near(before.g, 1)).toBeLessThan(1e-9);
    expect(near(after.g, 1)).toBeLessThan(1e-9);
  }
  expect(near(rounded.milk?.g ?? 0.5, 1)).toBeLessThan(1e-9);
});

// Mixed again by hand: 61 ml of spirit and 32 ml of water, which a 5 ml jigger makes 60 and 30.
test("the change is that of the drink mixed again from the rounded amounts", () => {
  const of = (volume: number, strength: number) =>
    liquidOf({ volume, strength, sugarPerLitre: 0, acids: {}, cation: 0, solidsPerLitre: 0 });
  const [exactly, measured] = [mix([of(61, 0.4), of(32, 0)]), mix([of(60, 0.4), of(30, 0)])];
  const lines = [lineOf("vodka-40", 61), lineOf("water", 32)];
  const spec = unwashed({ ...PUNCH, lines });
  const exact = planFor(spec, { by: "volume", volume: volumeOf(exactly) });
  const { plan: rounded, change } = must(roundedPlan(exact, JUG, NEW_HOUSE));
  expect(rounded.lines.map(({ before }) => Math.round(before.ml * 1e6) / 1e6)).toEqual([60, 30]);
  expect(change.volume).toBeCloseTo(volumeOf(measured) - volumeOf(exactly), 4);
  expect(change.strength).toBeCloseTo(strengthOf(measured) - strengthOf(exactly), 7);
  expect(change).not.toHaveProperty("ratio");
});

test("tools fine enough change nothing: the same wash, the same top-up, the same bottle", () => {
  const fine: Tools = { volumeStep: 1e-6, massStep: 1e-6, weigh: "volumes" };
  for (const weigh of ["volumes", "masses"] as const) {
    const { plan: rounded, change } = must(roundedPlan(plan, { ...fine, weigh }, NEW_HOUSE));
    for (const by of Object.values(change)) expect(Math.abs(by)).toBeLessThan(1e-4);
    expect(rounded.finalMl).toBeCloseTo(plan.finalMl, 3);
    expect(rounded.yield?.expected).toBeCloseTo(plan.yield?.expected ?? 0, 3);
    expect(rounded.heldBackMl).toBeCloseTo(plan.heldBackMl, 4);
    expect(rounded.servedMl).toBeCloseTo(plan.servedMl, 4);
  }
});

test("steeped leaves keep their part of the rounded amounts too", () => {
  const leaf = dryOf("leaf", { absorbs: 3 });
  const spec = { ...SPEC, lines: [...LINES, lineOf("leaf", 2, "g")] };
  const exact = planFor(spec, { by: "serves", serves: 40 }, cupboardWith(leaf));
  const fine: Tools = { volumeStep: 1e-6, massStep: 1e-6, weigh: "volumes" };
  expect(Math.abs(must(roundedPlan(exact, fine, NEW_HOUSE)).change.volume)).toBeLessThan(1e-3);
});

test("nothing rounds away: a dash in a small batch is still one step", () => {
  const small = planFor(SPEC, { by: "serves", serves: 2 });
  const rounded = must(roundedPlan(small, JUG, NEW_HOUSE)).plan;
  const bitters = rounded.lines.find(({ ingredientId }) => ingredientId === "aromatic-bitters-44");
  expect(bitters?.before.ml).toBe(5);
  expect(bitters?.after.ml).toBe(0);
});

test("the rounded plan is a plan, and says how it differs", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 5, max: 200, noNaN: true }),
      fc.constantFrom(...VOLUME_STEPS),
      fc.constantFrom(...MASS_STEPS),
      fc.constantFrom("volumes" as const, "masses" as const),
      (serves, volumeStep, massStep, weigh) => {
        const exact = planFor(SPEC, { by: "serves", serves });
        const tools = { volumeStep, massStep, weigh };
        const { plan: rounded, change } = must(roundedPlan(exact, tools, NEW_HOUSE));
        expect(planSchema.safeParse(rounded).success).toBe(true);
        expect(change.volume).toBeCloseTo(rounded.finalMl - exact.finalMl, 9);
        const ratio = (sugarToAcid(rounded.final) ?? 0) - (sugarToAcid(exact.final) ?? 0);
        expect(change.ratio).toBeCloseTo(ratio, 9);
        // Six parts and the milk, each off by half a step or lifted to one.
        expect(Math.abs(change.volume)).toBeLessThan(8 * Math.max(volumeStep, massStep));
        expect(must(roundedPlan(rounded, tools, NEW_HOUSE)).change.volume).toBeCloseTo(0, 6);
      },
    ),
    { numRuns: 30 },
  );
});

test("rounding that lets the leaves keep everything is refused, a step of nothing throws", () => {
  const leaf = dryOf("leaf", { absorbs: 10 });
  const lines = [lineOf("vodka-40", 10), lineOf("leaf", 0.5, "g")];
  const exact = planFor(
    unwashed({ ...PUNCH, lines }),
    { by: "volume", volume: 5 },
    cupboardWith(leaf),
  );
  const tools: Tools = { volumeStep: 1, massStep: 5, weigh: "volumes" };
  expect(roundedPlan(exact, tools, NEW_HOUSE)).toMatchObject({
    ok: false,
    refusal: "botanicals-keep-all",
  });
  expect(() => roundedPlan(plan, { ...JUG, volumeStep: 0 }, NEW_HOUSE)).toThrow(RangeError);
});

// Two filters keep 40 ml and the curd its part: a mouthful rounded to a jug's steps is drunk up.
test("a batch that rounding leaves to curd and filters is refused, and none is poured to nothing", () => {
  const bare: Spec = { ...PUNCH, lines: PUNCH.lines.map((line) => ({ ...line, heldBack: 0 })) };
  const refused = new Set<string>();
  for (const volume of [1, 2, 5, 30, 100]) {
    const exact = planBatch(bare, cupboardWith(), { by: "volume", volume }, NEW_HOUSE);
    for (const weigh of ["volumes", "masses"] as const) {
      const rounded = roundedPlan(must(exact), { volumeStep: 5, massStep: 5, weigh }, NEW_HOUSE);
      if (rounded.ok) expect(rounded.value.plan.finalMl).toBeGreaterThan(0);
      else refused.add(rounded.refusal);
    }
  }
  expect([...refused]).toEqual(["size-too-small"]);
});
