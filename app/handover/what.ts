import { ingredientsThrough, usedIn } from "../../core/spec/house-made.ts";
import type { Ingredient } from "../../core/spec/ingredient.ts";
import type { Spec } from "../../core/spec/spec.ts";
import { cupboard, specBook } from "../pantry.ts";
import { logOf, openBatches, ownIngredients, ownProcedures, planned, specs } from "../state.ts";
import type { Records } from "../storage/backup/write.ts";

/** What is handed to another phone: a run, a spec, or all that is being made and planned. */
export type Handed =
  | { readonly kind: "run"; readonly id: string }
  | { readonly kind: "spec"; readonly id: string }
  | { readonly kind: "day" };

const NOTHING: Records = { events: [], specs: [], ingredients: [], procedures: [], planned: [] };

/** Everything of the house's own that a spec is made of, its parts' specs included. */
function withParts(first: Spec): { specs: readonly Spec[]; ingredients: readonly Ingredient[] } {
  const used = ingredientsThrough(usedIn(first), cupboard.value, specBook.value).ingredients;
  const reached = new Set(used.map(({ id }) => id));
  const ingredients = ownIngredients.value.filter(({ id }) => reached.has(id));
  const made = new Set([first.id, ...ingredients.map(({ madeFrom }) => madeFrom)]);
  return { specs: specs.value.filter(({ id }) => made.has(id)), ingredients };
}

/** The records that are handed over; nothing where there is no such run or spec. */
export function recordsOf(what: Handed): Records | undefined {
  switch (what.kind) {
    case "run": {
      const events = logOf(what.id);
      return events.length === 0 ? undefined : { ...NOTHING, events };
    }
    case "spec": {
      const spec = specs.value.find(({ id }) => id === what.id);
      if (spec === undefined) return undefined;
      const parts = withParts(spec);
      const asked = new Set(parts.specs.map(({ procedure }) => procedure?.id));
      const procedures = ownProcedures.value.filter(({ id }) => asked.has(id));
      return { ...NOTHING, ...parts, procedures };
    }
    case "day":
      return {
        ...NOTHING,
        events: openBatches.value.flatMap(({ id }) => logOf(id)),
        planned: planned.value,
      };
  }
}

/** Reads what is handed over from the address of its screen: `run~id`, `spec~id` or `day`. */
export function handedOf(address: string): Handed | undefined {
  const [, kind, id = ""] = /^(run|spec|day)(?:~(.+))?$/su.exec(address) ?? [];
  if (kind === "day") return { kind };
  return (kind === "run" || kind === "spec") && id !== "" ? { kind, id } : undefined;
}
