import type { Cupboard } from "../../../core/spec/batch-amounts.ts";
import { CUPBOARD } from "../../../core/spec/cupboard-table.ts";
import { type HouseRules, NEW_HOUSE } from "../../../core/spec/house-rules.ts";
import type { Ingredient } from "../../../core/spec/ingredient.ts";
import type { Plan } from "../../../core/spec/plan.ts";
import { planBatch } from "../../../core/spec/plan-batch.ts";
import type { BatchSize, Spec, SpecLine } from "../../../core/spec/spec.ts";

/** A line: what, how much, and the share held back. */
export const lineOf = (
  ingredientId: string,
  value: number,
  unit: SpecLine["amount"]["unit"] = "ml",
  heldBack = 0,
): SpecLine => ({
  id: `${ingredientId}-${heldBack}`,
  ingredientId,
  amount: { value, unit },
  heldBack,
});

/** A washed punch of the tests' own, 110 ml as written: brandy 40, lemon 20, tea 30, syrup 20. */
export const PUNCH: Spec = {
  id: "punch",
  name: "Punch",
  version: 1,
  lines: [
    lineOf("brandy-40", 40, "ml", 0.25),
    lineOf("lemon-juice", 20),
    lineOf("black-tea", 30),
    lineOf("syrup-1-1", 20),
  ],
  wash: { dairyId: "milk-whole", ratio: 0.25, order: "punch-into-milk", filters: 2 },
  topUp: { rule: "proportion" },
  serve: { pour: 90, method: "stirred", glass: "Glass", garnish: "" },
  keepDays: 7,
  notes: "",
};

/** The same poured together and not washed. */
export function unwashed(spec: Spec = PUNCH): Spec {
  const { wash: _, ...rest } = spec;
  return rest;
}

/** Something dry of the tests' own. */
export const dryOf = (id: string, rest: Partial<Ingredient> = {}): Ingredient => ({
  id,
  name: id,
  kind: "dry",
  strength: 0,
  sweetness: { as: "g/L", value: 0 },
  acids: {},
  cation: 0,
  allergens: [],
  cautions: [],
  ...rest,
});

/** The cupboard of a new house, with more in it or others in their place. */
export const cupboardWith = (...own: readonly Ingredient[]): Cupboard =>
  new Map([...CUPBOARD, ...own].map((one) => [one.id, one]));

/** An ingredient of a new house's cupboard, changed. */
export function fromCupboard(id: string, changed: Partial<Ingredient> = {}): Ingredient {
  const found = CUPBOARD.find((one) => one.id === id);
  if (found === undefined) throw new RangeError(`the cupboard has no ${id}`);
  return { ...found, ...changed };
}

/** A plan that must exist. */
export function planFor(
  spec: Spec,
  size: BatchSize,
  cupboard: Cupboard = cupboardWith(),
  house: HouseRules = NEW_HOUSE,
): Plan {
  const plan = planBatch(spec, cupboard, size, house);
  if (!plan.ok) throw new RangeError(`the test spec must plan, got ${plan.refusal}`);
  return plan.value;
}

/** The value of a result that must be accepted. */
export function must<Value>(
  result: { ok: true; value: Value } | { ok: false; refusal: string },
): Value {
  if (!result.ok) throw new RangeError(`expected a value, got ${result.refusal}`);
  return result.value;
}
