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
import { stageStrengths } from "./abv-interval.ts";
import type { Plan } from "./plan.ts";
import { RULES } from "./rules-table.ts";

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
 * @param liquid - any amount above nothing
 * @param likely - the likely range of its strength, where it was worked out
 */
export function balanceOf(name: StageName, liquid: Liquid, likely?: StrengthInterval): Stage {
  const ethanol = given("ethanol-mass", liquid.ethanol, "g");
  const water = given("water-mass", liquid.water, "g");
  const sugarMass = given("sugar-mass", liquid.sugar, "g");
  const acidMass = given("acid-mass", totalAcid(liquid.acids), "g");
  const total = given("total-mass", massOf(liquid), "g");
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
  const likely = stageStrengths(plan);
  const mixed = balanceOf("mixed", plan.mixed, likely.mixed);
  const glass = balanceOf("glass", plan.served, likely.glass);
  if (plan.washed === undefined) return [mixed, glass];
  const washed = balanceOf("washed", plan.washed, likely.washed);
  return [mixed, washed, balanceOf("topped-up", plan.final, likely.final), glass];
}

/** The milk of a plan, with its derivation. */
export function milkFigure(plan: Plan): Figure | undefined {
  if (plan.milk === undefined || plan.spec.wash === undefined) return undefined;
  const punch = balanceOf("mixed", plan.mixed).volume;
  const ratio = given("milk-ratio", plan.spec.wash.ratio, "ratio");
  return figure("milk", plan.milk.ml, "ml", RULES.milk, [ratio, punch]);
}

/** The expected yield of a plan, with its derivation and interval. */
export function yieldFigure(plan: Plan): Figure | undefined {
  const milk = milkFigure(plan);
  if (plan.yield === undefined || milk === undefined) return undefined;
  const filters = given("filters", plan.spec.wash?.filters ?? 0, "count");
  const { expected, low, high } = plan.yield;
  const punch = balanceOf("mixed", plan.mixed).volume;
  return figure(
    "yield",
    expected,
    "ml",
    RULES.yield,
    [punch, milk, filters],
    Math.max(high - expected, expected - low),
  );
}
