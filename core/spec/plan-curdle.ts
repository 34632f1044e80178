import { type Curdling, willCurdle } from "../acid/curdle.ts";
import type { Pourable } from "../acid/curdle-fix.ts";
import { type Liquid, strengthOf, volumeOf } from "../liquid/liquid.ts";
import { totalAcid } from "../quantity/acid-name.ts";
import type { Ingredient } from "./ingredient.ts";
import { portionOf } from "./ingredient-liquid.ts";
import type { Plan } from "./plan.ts";

const punchOf = (liquid: Liquid) => ({
  volume: volumeOf(liquid),
  acids: liquid.acids,
  cation: liquid.cation,
  strength: strengthOf(liquid),
});

/** One ml of an ingredient, as the curdling model wants it. */
function perMl(ingredient: Ingredient | undefined): Pourable | undefined {
  if (ingredient === undefined) return undefined;
  const one = portionOf(ingredient, { kind: "volume", ml: 1000 });
  if (!one.ok) return undefined;
  const { acids, cation } = one.value.liquid;
  const each = Object.fromEntries(
    Object.entries(acids).map(([name, g]) => [name, (g ?? 0) / 1000] as const),
  );
  return { acids: each, cation: cation / 1000, strength: strengthOf(one.value.liquid) };
}

const sourest = (plan: Plan): Ingredient | undefined =>
  plan.ingredients
    .filter((one) => one.kind === "juice")
    .sort((a, b) => totalAcid(b.acids) - totalAcid(a.acids))[0];

const strongest = (plan: Plan): Ingredient | undefined =>
  plan.ingredients
    .filter((one) => one.kind === "spirit")
    .sort((a, b) => b.strength - a.strength)[0];

/**
 * Whether a planned punch will curdle its milk, and what would change that.
 *
 * @returns nothing for a spec that is not washed
 */
export function curdlingOf(plan: Plan): Curdling | undefined {
  if (plan.milk === undefined) return undefined;
  const juice = perMl(sourest(plan));
  const base = perMl(strongest(plan));
  return willCurdle({
    punch: punchOf(plan.mixed),
    dairy: plan.milk.dairy,
    dairyVolume: plan.milk.ml,
    ...(juice === undefined ? {} : { juice }),
    ...(base === undefined ? {} : { base }),
  });
}
