import { type Figure, figure, given } from "../quantity/figure.ts";
import type { Plan } from "./plan.ts";
import { type PlanUse, usesOf } from "./plan-use.ts";
import { RULES } from "./rules-table.ts";

/** What one ingredient of a batch costs, in the house's money. */
export interface IngredientCost {
  readonly id: string;
  readonly name: string;
  readonly cost: number;
}

/** What a batch costs, as far as its ingredients have prices. */
export interface BatchCost {
  readonly batch: Figure;
  readonly serve: Figure;
  /** Cost of a serve as a share of its menu price; nothing where the spec has none. */
  readonly pour?: Figure;
  /** The dearest first. */
  readonly priced: readonly IngredientCost[];
  /** Names of what has no price: with any of these, every cost is a least. */
  readonly unpriced: readonly string[];
}

function costOfUse({ id, name, weighed, ml, g, ingredient }: PlanUse): readonly IngredientCost[] {
  const price = ingredient?.price;
  if (price === undefined) return [];
  return [{ id, name, cost: ((weighed ? g : ml) * price.paid) / price.pack }];
}

/**
 * What a batch costs, what a serve costs, and what share of the menu price that is. What stays in curd
 * and filters is paid for by the serves that are really bottled.
 *
 * @param plan - amounts and the prices frozen into it
 * @param bottledMl - what was bottled, ml above 0; the planned volume where nothing is known yet
 * @returns costs in the house's money, with their derivation, and the names of what has no price
 * @throws RangeError when nothing is bottled
 * @source sum of amount times price paid per ml (or g for dry goods)
 * @limits ingredients alone: garnish, ice, filters, work and tax are not in it; menu price and prices
 * paid must be in the same money and both with tax, or both without
 */
export function costOf(plan: Plan, bottledMl: number = plan.finalMl): BatchCost {
  if (!(bottledMl > 0)) throw new RangeError(`more than 0 ml must be bottled, got ${bottledMl}`);
  const uses = usesOf(plan).filter(({ ml, g }) => ml > 0 || g > 0);
  const priced = uses.flatMap(costOfUse).sort((a, b) => b.cost - a.cost);
  const { pour: pourMl, price } = plan.spec.serve;
  const parts = priced.map(({ name, cost }) => given(name, cost, "money"));
  const total = priced.reduce((sum, { cost }) => sum + cost, 0);
  const batch = figure("batch-cost", total, "money", RULES.batchCost, parts);
  const bottled = given("bottled", bottledMl, "ml");
  const oneServe = given("serve-pour", pourMl, "ml");
  const each = (total * pourMl) / bottledMl;
  const serve = figure("serve-cost", each, "money", RULES.serveCost, [batch, bottled, oneServe]);
  const unpriced = uses.filter(({ ingredient }) => ingredient?.price === undefined);
  const cost = { batch, serve, priced, unpriced: unpriced.map(({ name }) => name) };
  if (price === undefined) return cost;
  const from = [serve, given("menu-price", price, "money")];
  return { ...cost, pour: figure("pour-cost", each / price, "share", RULES.pourCost, from) };
}
