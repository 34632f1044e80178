import fc from "fast-check";
import { expect, test } from "vitest";
import { volumeOf } from "../../../core/liquid/liquid.ts";
import { NEW_HOUSE } from "../../../core/spec/house-rules.ts";
import { lotsFor } from "../../../core/spec/lots.ts";
import { must, PUNCH, planFor, unwashed } from "../../support/world/punch-spec.ts";

const plan = planFor(PUNCH, { by: "volume", volume: 18_000 });

test("a batch that fits is one lot, the plan itself", () => {
  expect(must(lotsFor(plan, 50_000, NEW_HOUSE))).toEqual({ count: 1, plan });
  const poured = plan.yield?.poured ?? 0;
  expect(must(lotsFor(plan, poured, NEW_HOUSE)).count).toBe(1);
});

// By hand: 20 L in a 12 L vessel is two lots, in a 5 L vessel four; unwashed, so no filters to feed.
test.each([
  [12_000, 2],
  [10_000, 2],
  [9_999, 3],
  [5_000, 4],
])("20 L of an unwashed punch in a vessel of %d ml: %d lots", (vessel, count) => {
  const whole = planFor(unwashed(), { by: "volume", volume: 20_000 });
  const lots = must(lotsFor(whole, vessel, NEW_HOUSE));
  expect(lots.count).toBe(count);
  expect(lots.plan.finalMl).toBeCloseTo(20_000 / count, 4);
});

test("each lot's own filters may ask for one lot more", () => {
  // By hand: halves of a 10 L fill, each with 40 ml more for its filters, do not fit into 5 L.
  const whole = planFor(PUNCH, { by: "vessel", vessel: 10_000 });
  const lots = must(lotsFor(whole, 5000, NEW_HOUSE));
  expect(lots.count).toBe(3);
});

test("lots fit, are as few as fit, and make the batch", () => {
  fc.assert(
    fc.property(fc.double({ min: 600, max: 30_000, noNaN: true }), (vessel) => {
      const lots = must(lotsFor(plan, vessel, NEW_HOUSE));
      const { yield: yielded, mixed, finalMl, spec } = lots.plan;
      expect(yielded?.poured ?? volumeOf(mixed)).toBeLessThanOrEqual(vessel * (1 + 1e-6));
      expect(finalMl * lots.count).toBeCloseTo(plan.finalMl, 2);
      expect(spec).toBe(plan.spec);
      if (lots.count > 1) {
        const fewer = planFor(PUNCH, { by: "volume", volume: 18_000 / (lots.count - 1) });
        expect(fewer.yield?.poured).toBeGreaterThan(vessel);
      }
    }),
    { numRuns: 40 },
  );
});

test("a vessel that its filters drink up is refused; no vessel at all throws", () => {
  expect(lotsFor(plan, 50, NEW_HOUSE)).toMatchObject({ ok: false, refusal: "vessel-too-small" });
  expect(() => lotsFor(plan, 0, NEW_HOUSE)).toThrow(/vessel must hold more than 0/);
});
