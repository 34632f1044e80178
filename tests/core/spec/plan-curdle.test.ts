import fc from "fast-check";
import { expect, test } from "vitest";
import { mix } from "../../../core/liquid/mixing.ts";
import { NEW_HOUSE } from "../../../core/spec/house-rules.ts";
import { portionOf } from "../../../core/spec/ingredient-liquid.ts";
import { planBatch } from "../../../core/spec/plan-batch.ts";
import { curdlingOf } from "../../../core/spec/plan-curdle.ts";
import type { Spec } from "../../../core/spec/spec.ts";
import { anySize, anyWashedSpec } from "../../support/world/any-spec.ts";
import {
  cupboardWith,
  fromCupboard,
  lineOf,
  must,
  PUNCH,
  planFor,
  unwashed,
} from "../../support/world/punch-spec.ts";

const LITRES_5 = { by: "volume", volume: 5000 } as const;
const curdling = (lines: Spec["lines"]) => curdlingOf(planFor({ ...PUNCH, lines }, LITRES_5));

test("a spec that is not washed is not asked", () => {
  expect(curdlingOf(planFor(unwashed(), LITRES_5))).toBeUndefined();
});

// DAIRY.md, computed on published points: milk to punch 1:4, 20 % lemon juice pH 3.01, 10 % 3.49,
// 5 % 4.15, 3 % 4.63; trusted to 0.3. Those punches hold no spirit.
test.each([
  [20, 3.01],
  [10, 3.49],
  [5, 4.15],
  [3, 4.63],
])("%s %% of lemon juice comes to about pH %s", (share, pH) => {
  const found = curdling([lineOf("lemon-juice", share), lineOf("water", 100 - share)]);
  expect(Math.abs((found?.pH ?? 0) - pH)).toBeLessThan(0.3);
});

test("a sour punch clearly curdles; one without acid does not, and says what would help", () => {
  expect(curdling(PUNCH.lines)?.verdict).toBe("clearly");
  const flat = curdling([lineOf("brandy-40", 40), lineOf("black-tea", 60)]);
  expect(flat?.verdict).toBe("no");
  // No juice in the spec: only less milk, more spirit or powdered acid can be offered.
  expect(Object.keys(flat?.fixes ?? {}).sort()).toEqual(["lessDairyMl", "moreAcidG", "moreBaseMl"]);
  expect(flat?.fixes.moreAcidG).toBeGreaterThan(0);
});

test("the sourest juice of the spec is offered, and as much as it says is enough", () => {
  const faint = [lineOf("brandy-40", 40), lineOf("water", 60), lineOf("orange-juice", 2)];
  const plan = planFor({ ...PUNCH, lines: [...faint, lineOf("lemon-juice", 0.2)] }, LITRES_5);
  const fixes = curdlingOf(plan)?.fixes;
  const lemon = Number(fixes?.moreJuiceMl);
  expect(lemon).toBeGreaterThan(0);
  expect(lemon).toBeLessThan(0.5 * Number(curdling(faint)?.fixes.moreJuiceMl));
  const withMore = (ml: number) => {
    const juice = must(portionOf(fromCupboard("lemon-juice"), { kind: "volume", ml }));
    return curdlingOf({ ...plan, mixed: mix([plan.mixed, juice.liquid]) })?.verdict;
  };
  expect(withMore(lemon)).toBe("clearly");
  expect(withMore(0.9 * lemon)).not.toBe("clearly");
});

test("the strongest spirit of the spec is offered: it takes less of it", () => {
  const sour = [lineOf("lemon-juice", 1.8), lineOf("water", 60), lineOf("brandy-40", 1)];
  const base = (lines: Spec["lines"]) => Number(curdling(lines)?.fixes.moreBaseMl);
  expect(base([...sour, lineOf("neutral-96", 0.01)])).toBeLessThan(0.5 * base(sour));
});

test("plant milk without casein never curdles, whatever is poured", () => {
  const wash = { dairyId: "oat-milk", ratio: 0.25, order: "punch-into-milk", filters: 2 } as const;
  const found = curdlingOf(planFor({ ...PUNCH, wash }, LITRES_5));
  expect(found).toMatchObject({ verdict: "no", onset: null, fixes: {} });
  expect(found?.notes).toContain("no-casein");
});

test("property: any washed spec has an answer, and a larger batch has the same", () => {
  fc.assert(
    fc.property(anyWashedSpec, anySize, (spec, size) => {
      const plan = planBatch(spec, cupboardWith(), size, NEW_HOUSE);
      if (!plan.ok) return;
      const found = curdlingOf(plan.value);
      expect(["clearly", "borderline", "no"]).toContain(found?.verdict);
      expect(found?.low).toBeLessThan(found?.high ?? 0);
      const { mixed, milk } = plan.value;
      if (milk === undefined) return;
      const half = {
        ...plan.value,
        milk: { ...milk, ml: milk.ml / 2 },
        mixed: {
          ...mixed,
          ethanol: mixed.ethanol / 2,
          water: mixed.water / 2,
          sugar: mixed.sugar / 2,
        },
      };
      const acids = Object.fromEntries(
        Object.entries(mixed.acids).map(([name, g]) => [name, (g ?? 0) / 2]),
      );
      const small = curdlingOf({
        ...half,
        mixed: { ...half.mixed, acids, cation: mixed.cation / 2, solids: mixed.solids / 2 },
      });
      expect(small?.pH).toBeCloseTo(found?.pH ?? 0, 6);
      expect(small?.verdict).toBe(found?.verdict);
    }),
    { numRuns: 30 },
  );
});
