import type { Ingredient } from "./ingredient.ts";

/**
 * What an ingredient is fetched in where the house has not said: ml, and g for dry goods.
 * Bottles of spirit and wine: nominal quantities of the EU (0.7 and 0.75 L, from memory of Directive
 * 2007/45/EC); the rest common practice, no source: litres for what is squeezed, brewed or cooked.
 */
export const USUAL_PACK: Readonly<Record<Ingredient["kind"], number>> = {
  spirit: 700,
  liqueur: 700,
  wine: 750,
  juice: 1000,
  syrup: 1000,
  tea: 1000,
  dairy: 1000,
  bitters: 200,
  water: 1000,
  dry: 1000,
};

/** A pack of what the cupboard no longer knows. */
export const UNKNOWN_PACK = 1000;
