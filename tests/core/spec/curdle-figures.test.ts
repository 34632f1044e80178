import { expect, test } from "vitest";
import { curdleFigures } from "../../../core/spec/curdle-figures.ts";
import { curdlingOf } from "../../../core/spec/plan-curdle.ts";
import type { Spec } from "../../../core/spec/spec.ts";
import { PUNCH, planFor } from "../../support/world/punch-spec.ts";

const figuresOf = (spec: Spec) => {
  const plan = planFor(spec, { by: "volume", volume: 3000 });
  const curdling = curdlingOf(plan);
  if (curdling === undefined) throw new RangeError("a washed spec has a verdict");
  return { plan, curdling, ...curdleFigures(plan, curdling) };
};

test("pH with its band, and the onset, are those of the verdict", () => {
  const { plan, curdling, pH, onset } = figuresOf(PUNCH);
  expect(pH.value).toBe(curdling.pH);
  expect(pH.value - (pH.within ?? 0)).toBeCloseTo(curdling.low, 12);
  expect(pH.value + (pH.within ?? 0)).toBeCloseTo(curdling.high, 12);
  expect(pH.from.map(({ name }) => name)).toEqual(["volume", "acid", "strength", "milk"]);
  expect(pH.from.at(-1)?.value).toBe(plan.milk?.ml);
  expect(onset?.value).toBe(curdling.onset);
});

// The formula it shows, worked by hand from the strength it names; 5.1 at 25 degrees C is published
// (Food Hydrocolloids 7 (1993) 113, abstract).
test("the onset follows from the formula it shows", () => {
  const { onset } = figuresOf(PUNCH);
  const [mix] = onset?.from ?? [];
  expect(mix?.name).toBe("mix-strength");
  expect(onset?.value).toBeCloseTo(5.1 + 0.032 * (20 - 25) + 2 * (mix?.value ?? Number.NaN), 9);
});

test("a milk without casein has a pH, and no onset", () => {
  const { wash } = PUNCH;
  if (wash === undefined) throw new RangeError("the punch is washed");
  const { pH, ...rest } = figuresOf({ ...PUNCH, wash: { ...wash, dairyId: "oat-milk" } });
  expect(pH.value).toBeGreaterThan(2);
  expect(rest.onset).toBeUndefined();
});
