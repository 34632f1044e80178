import type { StrengthInterval } from "../liquid/interval.ts";
import {
  acidPerLitre,
  brixOf,
  type Liquid,
  massOf,
  strengthOf,
  sugarPerLitre,
  sugarToAcid,
  volumeOf,
} from "../liquid/liquid.ts";
import { totalAcid } from "../quantity/acid-name.ts";
import { type Figure, figure, given } from "../quantity/figure.ts";
import { abvIntervals } from "./abv-interval.ts";
import type { Plan } from "./plan.ts";
import { RULES } from "./rules-table.ts";
import { serumOf } from "./wash.ts";

/** The stages of a washed batch; an unwashed one is mixed, then in the glass. */
export type StageName = "mixed" | "washed" | "topped-up" | "glass";

/** The balance of a batch at one stage, each number with its derivation. */
export interface Stage {
  readonly name: StageName;
  readonly volume: Figure;
  readonly strength: Figure;
  readonly sugar: Figure;
  readonly acid: Figure;
  readonly brix: Figure;
  /** Nothing where there is no acid. */
  readonly ratio?: Figure;
}

/**
 * The balance of a liquid: volume, ABV, sugar, acid, °Brix and their ratio.
 *
 * @param name - which stage it stands for
 * @param liquid - any amount
 * @param likely - the likely range of its strength, where it was worked out
 */
export function balanceOf(name: StageName, liquid: Liquid, likely?: StrengthInterval): Stage {
  const mass = (of: string, g: number): Figure => figure(of, g, "g", RULES.mass, []);
  const ethanol = mass("ethanol-mass", liquid.ethanol);
  const water = mass("water-mass", liquid.water);
  const sugarMass = mass("sugar-mass", liquid.sugar);
  const acidMass = mass("acid-mass", totalAcid(liquid.acids));
  const total = mass("total-mass", massOf(liquid));
  const parts = [ethanol, water, sugarMass, acidMass];
  const volume = figure("volume", volumeOf(liquid), "ml", RULES.volume, parts);
  const sugar = sugarPerLitre(liquid);
  const ratio = sugarToAcid(liquid);
  const within = likely && Math.max(likely.high - likely.strength, likely.strength - likely.low);
  const from = [ethanol, volume];
  const balance = {
    name,
    volume,
    strength: figure("strength", strengthOf(liquid), "abv", RULES.strength, from, within),
    sugar: figure("sugar", sugar, "g/L", RULES.perLitre, [sugarMass, volume]),
    acid: figure("acid", acidPerLitre(liquid), "g/L", RULES.perLitre, [acidMass, volume]),
    brix: figure("brix", brixOf(liquid), "brix", RULES.brix, [sugarMass, total]),
  };
  if (ratio === null) return balance;
  return { ...balance, ratio: figure("ratio", ratio, "ratio", RULES.ratio, [sugarMass, acidMass]) };
}

/** The balance of a planned batch at each of its stages, in order, strengths with their range. */
export function stagesOf(plan: Plan): readonly Stage[] {
  const likely = abvIntervals(plan);
  const mixed = balanceOf("mixed", plan.mixed, likely.mixed);
  const glass = balanceOf("glass", plan.served, likely.glass);
  if (plan.washed === undefined) return [mixed, glass];
  const washed = balanceOf("washed", plan.washed, likely.washed);
  return [mixed, washed, balanceOf("topped-up", plan.final, likely.final), glass];
}

/**
 * The milk of a plan, with its derivation.
 *
 * @returns nothing for a spec that is not washed
 */
export function milkFigure(plan: Plan): Figure | undefined {
  if (plan.milk === undefined || plan.spec.wash === undefined) return undefined;
  const punch = balanceOf("mixed", plan.mixed).volume;
  const ratio = given("milk-ratio", plan.spec.wash.ratio, "ratio");
  return figure("milk", plan.milk.ml, "ml", RULES.milk, [ratio, punch]);
}

/** What curd and filters are taken to keep; a plan of an older version does not say. */
function keepsOf({ yield: expected, spec }: Plan): readonly Figure[] {
  const filters = given("filters", spec.wash?.filters ?? 0, "count");
  if (expected?.curdKeeps === undefined || expected.filterKeeps === undefined) return [filters];
  const curd = given("curd-keeps", expected.curdKeeps, "ratio");
  return [curd, filters, given("filter-keeps", expected.filterKeeps, "ml")];
}

/**
 * The expected yield of a plan, with its derivation and interval.
 *
 * @returns nothing for a spec that is not washed
 */
export function yieldFigure(plan: Plan): Figure | undefined {
  const milk = milkFigure(plan);
  if (plan.milk === undefined || plan.yield === undefined || milk === undefined) return undefined;
  const { expected, low, high } = plan.yield;
  const punch = balanceOf("mixed", plan.mixed).volume;
  const whole = volumeOf(
    serumOf({ punch: plan.mixed, dairy: plan.milk.dairy, milk: plan.milk.ml }),
  );
  const serum = figure("serum", whole, "ml", RULES.serum, [punch, milk]);
  const within = Math.max(high - expected, expected - low);
  return figure("yield", expected, "ml", RULES.yield, [serum, milk, ...keepsOf(plan)], within);
}
