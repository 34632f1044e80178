import { CUPBOARD } from "../../../core/spec/cupboard-table.ts";
import { NEW_HOUSE } from "../../../core/spec/house-rules.ts";
import type { Ingredient } from "../../../core/spec/ingredient.ts";
import type { Plan } from "../../../core/spec/plan.ts";
import { planBatch } from "../../../core/spec/plan-batch.ts";
import type { Spec } from "../../../core/spec/spec.ts";
import { lineOf, must, PUNCH, unwashed } from "./punch-spec.ts";

const made = (id: string, madeFrom: string, like: string): Ingredient => {
  const found = CUPBOARD.find((one) => one.id === like);
  if (found === undefined) throw new RangeError(`the cupboard has no ${like}`);
  return { ...found, id, name: id, madeFrom };
};

/** A punch with a tea of the house, whose syrup is the house's too: two batches come before it. */
export const HOUSE_MADE: readonly Spec[] = [
  { ...PUNCH, lines: [...PUNCH.lines.slice(0, 2), lineOf("house-tea", 30, "ml")] },
  {
    ...unwashed(),
    id: "tea-spec",
    name: "House tea",
    lines: [lineOf("black-tea", 90), lineOf("house-syrup", 10)],
    procedure: { id: "short-infusion", times: {} },
  },
  {
    ...unwashed(),
    id: "syrup-spec",
    name: "House syrup",
    lines: [lineOf("syrup-1-1", 100)],
    procedure: { id: "syrup", times: {} },
  },
];

/** The cupboard that they are planned with. */
export const HOUSE_CUPBOARD = new Map(
  [
    ...CUPBOARD,
    made("house-tea", "tea-spec", "black-tea"),
    made("house-syrup", "syrup-spec", "syrup-1-1"),
  ].map((one) => [one.id, one]),
);

/** A plan of one of them, so many ml in the bottle. */
export const houseMadePlan = (spec: Spec, volume: number): Plan =>
  must(planBatch(spec, HOUSE_CUPBOARD, { by: "volume", volume }, NEW_HOUSE));
