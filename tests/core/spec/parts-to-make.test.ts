import { expect, test } from "vitest";
import { partsToMake } from "../../../core/spec/parts-to-make.ts";
import type { Spec } from "../../../core/spec/spec.ts";
import { HOUSE_MADE, houseMadePlan } from "../../support/world/house-made.ts";
import { PUNCH } from "../../support/world/punch-spec.ts";

const [punch = PUNCH, tea = PUNCH, syrup = PUNCH] = HOUSE_MADE;
const book = (...specs: readonly Spec[]) => new Map(specs.map((spec) => [spec.id, spec]));
const plan = houseMadePlan(punch, 5000);

test("a house-made tea has to be made first, as much of it as the batch pours", () => {
  const [part, ...more] = partsToMake(plan, book(tea, syrup));
  expect(more).toEqual([]);
  expect(part?.spec).toEqual(tea);
  const poured = plan.lines.find(({ ingredientId }) => ingredientId === "house-tea");
  expect(part?.ml).toBeCloseTo((poured?.before.ml ?? 0) + (poured?.after.ml ?? 0), 9);
  expect(part?.ml).toBeGreaterThan(500);
});

test("what is bought or no longer in the book is not made first", () => {
  expect(partsToMake(plan, new Map())).toEqual([]);
  expect(partsToMake(houseMadePlan(syrup, 1000), book(...HOUSE_MADE))).toEqual([]);
});

test("a spec that is being made already is not made again within itself", () => {
  expect(partsToMake(plan, book({ ...tea, id: "tea-spec" }), new Set(["tea-spec"]))).toEqual([]);
  const itself = { ...plan, spec: { ...plan.spec, id: "tea-spec" } };
  expect(partsToMake(itself, book(tea))).toEqual([]);
});
