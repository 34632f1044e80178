import { acidPerLitre, strengthOf, sugarPerLitre, sugarToAcid } from "../liquid/liquid.ts";
import { mix } from "../liquid/mixing.ts";
import { accepted, type Result, refused } from "../quantity/result.ts";
import { roundToStep } from "../quantity/rounding.ts";
import type { StrainRefusal } from "./absorption.ts";
import { pouredTogether } from "./batch-amounts.ts";
import { outcomeOf } from "./batch-outcome.ts";
import { type Trial, washedTrial } from "./batch-trial.ts";
import type { HouseRules } from "./house-rules.ts";
import type { Plan, PlanLine } from "./plan.ts";
import { type PlanPour, planPours, poured } from "./plan-pours.ts";

/** What a house measures with. */
export interface Tools {
  /** Of jigger and jug, ml. */
  readonly volumeStep: number;
  /** Of the scale, g. */
  readonly massStep: number;
  /** Whether liquids are measured or weighed; dry goods are weighed either way. */
  readonly weigh: "volumes" | "masses";
}

/** How far rounding moves what is in the bottle: the rounded plan less the exact one. */
export interface RoundingChange {
  /** ml */
  readonly volume: number;
  /** v/v */
  readonly strength: number;
  /** g/L */
  readonly sugar: number;
  readonly acid: number;
  /** Nothing where there is no acid. */
  readonly ratio?: number;
}

/** A plan in amounts that can be measured, and what that changes. */
export interface RoundedPlan {
  readonly plan: Plan;
  readonly change: RoundingChange;
}

/** Why there is nothing to pour once it is rounded. */
export type RoundingRefusal = StrainRefusal | "size-too-small";

type Part = PlanLine["before"];

function roundedPart(part: Part, weighed: boolean, tools: Tools): Part {
  const g = weighed || tools.weigh === "masses" ? roundToStep(part.g, tools.massStep) : undefined;
  if (g !== undefined) return { ml: part.g > 0 ? (part.ml * g) / part.g : 0, g };
  const ml = roundToStep(part.ml, tools.volumeStep);
  return { ml, g: part.ml > 0 ? (part.g * ml) / part.ml : 0 };
}

function roundedMilk(plan: Plan, tools: Tools): number {
  if (plan.milk === undefined) return 0;
  const { ml } = roundedPart(plan.milk, false, tools);
  return ml;
}

function trialOf(
  plan: Plan,
  pours: readonly PlanPour[],
  milk: number,
  house: HouseRules,
): Result<Trial, RoundingRefusal> {
  const vessel = pouredTogether(pours.map((pour) => poured(pour, pour.line.before)));
  if (!vessel.ok) return vessel;
  const last = pouredTogether(pours.map((pour) => poured(pour, pour.line.after)));
  if (!last.ok) return last;
  const dairy = plan.ingredients.find(({ id }) => id === plan.spec.wash?.dairyId);
  const washed = washedTrial(plan.spec, house, vessel.value.liquid, dairy, milk);
  if (!(washed.clearMl > 0)) return refused("size-too-small");
  const { liquid: heldBack, ml: heldBackMl } = last.value;
  return accepted({ ...washed, heldBack, heldBackMl, final: mix([washed.clear, heldBack]) });
}

function changeFrom(exact: Plan, plan: Plan): RoundingChange {
  const change = {
    volume: plan.finalMl - exact.finalMl,
    strength: strengthOf(plan.final) - strengthOf(exact.final),
    sugar: sugarPerLitre(plan.final) - sugarPerLitre(exact.final),
    acid: acidPerLitre(plan.final) - acidPerLitre(exact.final),
  };
  const ratio = sugarToAcid(plan.final);
  const was = sugarToAcid(exact.final);
  return ratio === null || was === null ? change : { ...change, ratio: ratio - was };
}

/**
 * A plan with every amount rounded to what the house can measure, taken through wash and top-up again
 * by mass, so that what rounding does to the drink is computed and not guessed.
 *
 * @param plan - exact
 * @param tools - steps of jigger and scale, and which of them liquids are measured with
 * @param house - what curd and filters keep, as for the exact plan
 * @returns the rounded plan, fit to be made, and the change it makes in the bottle; or a refusal where
 * rounding leaves nothing to strain off, or nothing that curd and filters do not keep
 * @throws RangeError when a step is not above 0, or the plan lacks an ingredient of its own
 * @source nearest step, never to nothing; the rest as `planBatch`
 */
export function roundedPlan(
  plan: Plan,
  tools: Tools,
  house: HouseRules,
): Result<RoundedPlan, RoundingRefusal> {
  const pours = planPours(plan).map((pour) => {
    const { weighed, before, after } = pour.line;
    const round = (part: Part) => roundedPart(part, weighed, tools);
    return { ...pour, line: { ...pour.line, before: round(before), after: round(after) } };
  });
  const trial = trialOf(plan, pours, roundedMilk(plan, tools), house);
  if (!trial.ok) return trial;
  const lines = pours.map(({ line }) => line);
  const outcome = outcomeOf(plan.spec, trial.value, plan.milk?.name ?? "", house);
  const rounded: Plan = { ...plan, lines, ...outcome };
  return accepted({ plan: rounded, change: changeFrom(plan, rounded) });
}
