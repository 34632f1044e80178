import type { Run } from "../../core/run/run.ts";

/** What a batch's plan calls an ingredient; its id, where the plan does not know it. */
export const ingredientOf = (run: Run, id: string): string =>
  run.plan.ingredients.find((one) => one.id === id)?.name ?? id;
