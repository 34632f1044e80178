import fc from "fast-check";
import { CUPBOARD } from "../../../core/spec/cupboard-table.ts";
import type { Ingredient } from "../../../core/spec/ingredient.ts";
import type { BatchSize, Spec, SpecLine, TopUpRule } from "../../../core/spec/spec.ts";
import { SERVE_METHODS } from "../../../core/spec/spec.ts";

const WET = CUPBOARD.filter((one) => one.kind !== "dry" && one.kind !== "dairy");
const DRY = CUPBOARD.filter((one) => one.kind === "dry");
const MILKS = CUPBOARD.filter((one) => one.kind === "dairy");

const lineFrom = (
  shelf: readonly Ingredient[],
  units: readonly SpecLine["amount"]["unit"][],
  most: number,
): fc.Arbitrary<SpecLine> =>
  fc
    .tuple(
      fc.constantFrom(...shelf),
      fc.double({ min: 0.5, max: most, noNaN: true }),
      fc.constantFrom(...units),
      fc.constantFrom(0, 0, 0, 0.25, 0.5, 0.8),
    )
    .map(([{ id }, value, unit, heldBack]) => ({
      id,
      ingredientId: id,
      amount: { value, unit },
      heldBack,
    }));

const wash = fc.record({
  dairyId: fc.constantFrom(...MILKS.map(({ id }) => id)),
  ratio: fc.double({ min: 0.05, max: 0.6, noNaN: true }),
  order: fc.constantFrom("punch-into-milk" as const, "milk-into-punch" as const),
  filters: fc.integer({ min: 1, max: 6 }),
});

/** Rules that any spec can follow. */
const easyRule: fc.Arbitrary<TopUpRule> = fc.constantFrom(
  { rule: "proportion" },
  { rule: "fixed" },
);

function specOf(rule: fc.Arbitrary<TopUpRule>, washed: fc.Arbitrary<Spec["wash"]>) {
  return fc
    .record({
      wet: fc.array(lineFrom(WET, ["ml", "ml", "oz", "cl", "dash", "g"], 60), {
        minLength: 1,
        maxLength: 7,
      }),
      dry: fc.array(lineFrom(DRY, ["g"], 20), { maxLength: 2 }),
      wash: washed,
      topUp: rule,
      pour: fc.double({ min: 30, max: 200, noNaN: true }),
      method: fc.constantFrom(...SERVE_METHODS),
    })
    .map(
      ({ wet, dry, wash: how, topUp, pour, method }): Spec => ({
        id: "any",
        name: "Any",
        version: 1,
        lines: [...wet, ...dry].map((line, at) => ({ ...line, id: `${at}` })),
        ...(how === undefined ? {} : { wash: how }),
        topUp,
        serve: { pour, method, glass: "", garnish: "" },
        keepDays: 7,
        notes: "",
      }),
    );
}

/** A spec from the cupboard that is washed. */
export const anyWashedSpec: fc.Arbitrary<Spec> = specOf(easyRule, wash);

/** A spec from the cupboard, washed or not. */
export const anySpec: fc.Arbitrary<Spec> = specOf(easyRule, fc.option(wash, { nil: undefined }));

/** Enough in the bottle that filters leave something. */
export const anySize: fc.Arbitrary<BatchSize> = fc.oneof(
  fc.record({ by: fc.constant("serves" as const), serves: fc.integer({ min: 20, max: 300 }) }),
  fc.record({
    by: fc.constant("bottles" as const),
    bottles: fc.integer({ min: 2, max: 60 }),
    size: fc.constantFrom(500, 700, 750, 1000),
  }),
  fc.record({
    by: fc.constant("volume" as const),
    volume: fc.double({ min: 900, max: 50_000, noNaN: true }),
  }),
);
