import fc from "fast-check";
import { expect, test } from "vitest";
import { strengthOf } from "../../../core/liquid/liquid.ts";
import { NEW_HOUSE } from "../../../core/spec/house-rules.ts";
import { planBatch } from "../../../core/spec/plan-batch.ts";
import type { Spec, TopUpRule } from "../../../core/spec/spec.ts";
import {
  type Changes,
  heldBackShare,
  heldBackTogether,
  nearestTopUp,
  realChanges,
  withChanges,
} from "../../../core/spec/what-if.ts";
import {
  cupboardWith,
  lineOf,
  must,
  PUNCH,
  planFor,
  unwashed,
} from "../../support/world/punch-spec.ts";

const SIZE = { by: "volume", volume: 3000 } as const;
const BRANDY = PUNCH.lines[0]?.id ?? "";
const cupboard = cupboardWith();
const plans = (spec: Spec) => planBatch(spec, cupboard, SIZE, NEW_HOUSE);
const toReach = (target: number): Spec => ({ ...PUNCH, topUp: { rule: "strength", target } });
const splitOf = (spec: Spec, share: number): Spec =>
  withChanges(spec, { heldBack: heldBackTogether(spec, share, "bar") });

// Worked by hand. Brandy 40 ml held back by a quarter, rum 20 ml by a half: 20 of 60 ml.
const TWO: Spec = {
  ...PUNCH,
  lines: [...PUNCH.lines, lineOf("aged-rum-40", 20, "ml", 0.5)],
};
const RUM = TWO.lines.at(-1)?.id ?? "";

test.each([
  // as it stands; half as much; half of all: 0.25 -> 1 - 0.75 × 0.75, 0.5 -> 1 - 0.5 × 0.75
  { share: 1 / 3, brandy: 0.25, rum: 0.5 },
  { share: 1 / 6, brandy: 0.125, rum: 0.25 },
  { share: 1 / 2, brandy: 0.4375, rum: 0.625 },
  { share: 0, brandy: 0, rum: 0 },
  { share: 1, brandy: 1, rum: 1 },
])("held back together to $share of the split lines", ({ share, brandy, rum }) => {
  expect(heldBackShare(TWO, "bar")).toBeCloseTo(1 / 3, 12);
  const moved = heldBackTogether(TWO, share, "bar");
  expect(Object.keys(moved)).toEqual([BRANDY, RUM]);
  expect(moved[BRANDY]).toBeCloseTo(brandy, 12);
  expect(moved[RUM]).toBeCloseTo(rum, 12);
});

test("any share is met exactly, none leaves 0 to 1, the order of the lines stays", () => {
  const inner = fc.double({ min: 0.01, max: 0.99, noNaN: true });
  const any = fc.double({ min: 0, max: 1, noNaN: true });
  const ml = fc.double({ min: 1, max: 500, noNaN: true });
  fc.assert(
    fc.property(
      fc.array(fc.tuple(ml, inner), { minLength: 1, maxLength: 6 }),
      any,
      (all, share) => {
        const lines = all.map(([value, held], at) => ({
          ...lineOf("gin-43", value),
          id: `${at}`,
          heldBack: held,
        }));
        const moved = splitOf({ ...PUNCH, lines }, share);
        const sum = moved.lines.reduce((total, one) => total + one.amount.value * one.heldBack, 0);
        const whole = moved.lines.reduce((total, one) => total + one.amount.value, 0);
        expect(sum / whole).toBeCloseTo(share, 9);
        const was = lines.map((one) => one.heldBack);
        for (const [at, { heldBack }] of moved.lines.entries()) {
          expect(heldBack).toBeGreaterThanOrEqual(0);
          expect(heldBack).toBeLessThanOrEqual(1);
          const below = was.findIndex((one) => one < (was[at] ?? 0));
          if (below >= 0)
            expect(moved.lines[below]?.heldBack).toBeLessThanOrEqual(heldBack + 1e-12);
        }
      },
    ),
  );
});

test("a line in ounces counts by its ml, a weighed one not at all", () => {
  const lines = [
    { ...lineOf("gin-43", 1, "oz"), heldBack: 1 },
    { ...lineOf("aged-rum-40", 30), id: "rum", heldBack: 0.5 },
    { ...lineOf("citric-acid", 500, "g"), heldBack: 1 },
  ];
  expect(heldBackShare({ ...PUNCH, lines }, "bar")).toBeCloseTo(45 / 60, 12);
  expect(heldBackShare({ ...PUNCH, lines: lines.slice(2) }, "bar")).toBe(0);
  expect(heldBackShare(unwashed({ ...PUNCH, lines: [] }), "bar")).toBe(0);
});

test("changes are put into the spec, and nowhere else", () => {
  const changes: Changes = { ratio: 0.5, heldBack: { [BRANDY]: 0.6, gone: 1 } };
  const changed = withChanges(PUNCH, changes);
  expect(changed.wash).toEqual({ ...PUNCH.wash, ratio: 0.5 });
  expect(changed.lines.map((line) => line.heldBack)).toEqual([0.6, 0, 0, 0]);
  expect({ ...changed, wash: PUNCH.wash, lines: PUNCH.lines }).toEqual(PUNCH);
  expect(withChanges(PUNCH, {})).toEqual(PUNCH);
  expect(withChanges(unwashed(), { ratio: 0.5 })).toEqual(unwashed());
  const plan = planFor(changed, SIZE);
  // Half as much milk as punch: a third of what stands in the vessel.
  expect(plan.yield?.poured).toBeCloseTo(3 * (plan.milk?.ml ?? 0), 6);
});

test("a control put back where the spec has it changes nothing", () => {
  const rule: TopUpRule = { rule: "strength", target: 0.2 };
  const all: Changes = {
    ratio: 0.3,
    heldBack: { [BRANDY]: 0.5 },
    topUp: rule,
    size: { by: "volume", volume: 4000 },
  };
  expect(realChanges(PUNCH, SIZE, all)).toEqual(all);
  const back: Changes = {
    ratio: 0.25,
    heldBack: { [BRANDY]: 0.25 },
    topUp: { rule: "proportion" },
    size: { by: "volume", volume: 3000 },
  };
  expect(realChanges(PUNCH, SIZE, back)).toEqual({});
  expect(realChanges(toReach(0.2), SIZE, { topUp: rule })).toEqual({});
  expect(realChanges(toReach(0.21), SIZE, { topUp: rule })).toEqual({ topUp: rule });
  const unsplit = realChanges(PUNCH, SIZE, { heldBack: { [BRANDY]: 0.25, gone: 1 } });
  expect(unsplit).toEqual({});
});

test("the nearest top-up can be planned, and lies a step from what cannot", () => {
  const washed = strengthOf(must(plans(PUNCH)).washed ?? must(plans(PUNCH)).mixed);
  const weak = nearestTopUp(toReach(0.01), cupboard, SIZE, NEW_HOUSE);
  expect(weak?.rule === "strength" && weak.target - washed).toBeGreaterThan(0);
  expect(weak?.rule === "strength" && weak.target - washed).toBeLessThan(0.00102);
  expect(nearestTopUp(toReach(0.9), cupboard, SIZE, NEW_HOUSE)).toEqual({
    rule: "strength",
    // Brandy of 40 % vol is all that is held back.
    target: 0.399,
  });
  for (const target of [0.01, 0.9]) {
    const topUp = nearestTopUp(toReach(target), cupboard, SIZE, NEW_HOUSE);
    expect(plans({ ...PUNCH, ...(topUp && { topUp }) }).ok, String(target)).toBe(true);
  }
});

test("where no strength will do, everything goes in in proportion", () => {
  const none: Spec = {
    ...toReach(0.2),
    lines: PUNCH.lines.map((line) => ({ ...line, heldBack: 0 })),
  };
  expect(nearestTopUp(none, cupboard, SIZE, NEW_HOUSE)).toEqual({ rule: "proportion" });
  // Tea is weaker than the washed punch: it reaches nothing above it.
  const tea: Spec = {
    ...none,
    lines: none.lines.map((line, at) => ({ ...line, heldBack: at === 2 ? 0.5 : 0 })),
  };
  expect(nearestTopUp(tea, cupboard, SIZE, NEW_HOUSE)).toEqual({ rule: "proportion" });
});

test("what can be planned, or is wrong in another way, has no nearest top-up", () => {
  expect(nearestTopUp(PUNCH, cupboard, SIZE, NEW_HOUSE)).toBeUndefined();
  expect(nearestTopUp(toReach(0.2), cupboard, SIZE, NEW_HOUSE)).toBeUndefined();
  const empty: Spec = { ...toReach(0.9), lines: [] };
  expect(nearestTopUp(empty, cupboard, SIZE, NEW_HOUSE)).toBeUndefined();
});

test("a share outside 0 to 1 is our own mistake", () => {
  expect(() => heldBackTogether(PUNCH, 1.01, "bar")).toThrow(/between 0 and 1, got 1.01/u);
  expect(() => heldBackTogether(PUNCH, Number.NaN, "bar")).toThrow(RangeError);
});
