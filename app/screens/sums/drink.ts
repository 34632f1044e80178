import { liquidOf } from "../../../core/liquid/compose.ts";
import type { Liquid } from "../../../core/liquid/liquid.ts";

/** A drink from its strength and sugar; nothing where the two do not fit into its volume. */
export function drinkOf(
  volume: number,
  strength: number,
  sugarPerLitre: number,
): Liquid | undefined {
  const rest = { acids: {}, cation: 0, solidsPerLitre: 0 };
  try {
    const drink = liquidOf({ volume, strength, sugarPerLitre, ...rest });
    return drink.water > 0 ? drink : undefined;
  } catch (error) {
    // Checked figures that do not fit together: a slip of the finger.
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}
