import { computed } from "@preact/signals";
import { CUPBOARD } from "../core/spec/cupboard-table.ts";
import type { SpecBook } from "../core/spec/house-made.ts";
import type { Ingredient } from "../core/spec/ingredient.ts";
import { ownIngredients, specs } from "./state.ts";
import { tongue } from "./words/tongue.ts";

/** The generic entries as the language calls them; the house's own keep the name they were given. */
export const genericCupboard = computed<ReadonlyMap<string, Ingredient>>(() => {
  const names = tongue.value.words?.ingredientNames ?? {};
  return new Map(
    CUPBOARD.map((one) => {
      const name: unknown = Reflect.get(names, one.id);
      return [one.id, typeof name === "string" ? { ...one, name } : one];
    }),
  );
});

/** What the app came with under an id. */
export const genericOf = (id: string): Ingredient | undefined => genericCupboard.value.get(id);

/** Whether an entry is just as the app came with it, in whichever language it was saved. */
export function isGeneric(one: Ingredient): boolean {
  const came = CUPBOARD.find(({ id }) => id === one.id);
  if (came === undefined) return false;
  const names = [came.name, genericOf(one.id)?.name];
  return (
    names.includes(one.name) && JSON.stringify({ ...came, name: one.name }) === JSON.stringify(one)
  );
}

/** The cupboard: the house's own entries before the generic ones they replace. */
export const cupboard = computed<ReadonlyMap<string, Ingredient>>(
  () =>
    new Map([
      ...genericCupboard.value,
      ...ownIngredients.value.map((one) => [one.id, one] as const),
    ]),
);

/** The house's specs by id. */
export const specBook = computed<SpecBook>(
  () => new Map(specs.value.map((spec) => [spec.id, spec])),
);
