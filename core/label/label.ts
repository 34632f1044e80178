import { strengthOf } from "../liquid/liquid.ts";
import { actualFinal } from "../run/actual.ts";
import type { Bottles } from "../run/event.ts";
import { bottledOf, type Run } from "../run/run.ts";
import type { Allergen } from "../spec/allergen-table.ts";
import { OVERPROOF_FROM } from "../spec/caution-table.ts";
import { allergensOf, cautionsOf, milkStays } from "../spec/declared.ts";
import { labelStrength } from "./label-strength.ts";
import { LONGEST_CHILLED_DAYS, useByOf } from "./use-by.ts";

/** What stands on the label of a batch. Times in epoch ms. */
export interface Label {
  readonly name: string;
  /** What is written on the vessel. */
  readonly batch: string;
  readonly madeAt: number;
  readonly useBy: number;
  /** Whether it has been bottled; until then bottles and strength are the plan's. */
  readonly bottled: boolean;
  /** v/v, to the nearest 0.5 % vol. */
  readonly strength: number;
  readonly bottles: readonly Bottles[];
  readonly allergens: readonly Allergen[];
  /** Codes, the most pressing first. */
  readonly cautions: readonly string[];
}

function plannedBottles({ size }: Run["plan"]): readonly Bottles[] {
  if (size.by !== "bottles") return [];
  return [{ count: Math.ceil(size.bottles), size: size.size }];
}

/**
 * Cautions that the drink as a whole calls for, beside those of its ingredients. An overproof
 * spirit is a caution for whoever mixes; in the bottle only while the drink itself is that strong.
 *
 * @param strength - as the label gives it, so that figure and caution agree, v/v
 */
function labelCautions({ plan }: Run, strength: number): readonly string[] {
  const inherited = new Set(cautionsOf(plan.ingredients));
  inherited.delete("overproof");
  if (strength >= OVERPROOF_FROM) inherited.add("overproof");
  if (inherited.has("fresh-juice")) inherited.add("keep-cold");
  const rest = [...inherited].filter((code) => code !== "keep-cold");
  return [
    ...(inherited.has("keep-cold") ? ["keep-cold"] : []),
    ...(milkStays(plan) ? ["milk-stays"] : []),
    ...rest,
    ...(plan.spec.keepDays > LONGEST_CHILLED_DAYS ? ["over-seven-days"] : []),
    "local-use-by",
    "local-sale",
  ];
}

/**
 * The label of a batch.
 *
 * @param run - bottled or not yet
 * @returns what the label says; words and layout are the page's
 * @limits says nothing of whether the drink is fit to be drunk or sold: that is the house's to
 *   judge under its local code
 */
export function labelOf(run: Run): Label {
  const bottled = bottledOf(run);
  const allergens = allergensOf(run.plan.ingredients);
  const strength = labelStrength(strengthOf(actualFinal(run)));
  return {
    name: run.plan.spec.name,
    batch: run.batch,
    madeAt: run.startedAt,
    useBy: bottled?.useBy ?? useByOf(run.startedAt, run.plan.spec.keepDays),
    bottled: bottled !== undefined,
    strength,
    bottles: bottled?.bottles ?? plannedBottles(run.plan),
    allergens,
    cautions: labelCautions(run, strength),
  };
}
