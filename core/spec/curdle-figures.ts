import type { Curdling } from "../acid/curdle.ts";
import { type Figure, figure, given } from "../quantity/figure.ts";
import type { Plan } from "./plan.ts";
import { RULES } from "./rules-table.ts";
import { balanceOf, milkFigure } from "./stages.ts";

/** What the verdict on curdling rests on. */
export interface CurdleFigures {
  /** Of punch and milk together, with its band. */
  readonly pH: Figure;
  /** Where this milk begins to curdle; nothing where it cannot. */
  readonly onset?: Figure;
}

/**
 * The pH of punch and milk, and where that milk curdles, with their derivation.
 *
 * @param plan - of a washed batch
 * @param curdling - what was worked out for it
 */
export function curdleFigures(plan: Plan, curdling: Curdling): CurdleFigures {
  const { volume, strength, acid } = balanceOf("mixed", plan.mixed);
  const milk = milkFigure(plan);
  const from = [volume, acid, strength, ...(milk === undefined ? [] : [milk])];
  const { low, high, onset } = curdling;
  const pH = figure("mix-ph", curdling.pH, "pH", RULES.mixPh, from, (high - low) / 2);
  if (onset === null) return { pH };
  const mix = given("mix-strength", curdling.strength, "abv");
  return { pH, onset: figure("onset", onset, "pH", RULES.onset, [mix]) };
}
