import { computed } from "@preact/signals";
import { CUPBOARD } from "../core/spec/cupboard-table.ts";
import type { SpecBook } from "../core/spec/declared.ts";
import type { Ingredient } from "../core/spec/ingredient.ts";
import { ownIngredients, specs } from "./state.ts";

/** The cupboard: the house's own entries before the generic ones they replace. */
export const cupboard = computed<ReadonlyMap<string, Ingredient>>(
  () => new Map([...CUPBOARD, ...ownIngredients.value].map((one) => [one.id, one])),
);

/** The house's specs by id. */
export const specBook = computed<SpecBook>(
  () => new Map(specs.value.map((spec) => [spec.id, spec])),
);
