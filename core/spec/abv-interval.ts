import { type StrengthInterval, strengthInterval, type UncertainPour } from "../liquid/interval.ts";
import { type Liquid, strengthOf, volumeOf } from "../liquid/liquid.ts";
import { mix, portion, scaleLiquid, waterOf } from "../liquid/mixing.ts";
import type { Ingredient } from "./ingredient.ts";
import type { Plan } from "./plan.ts";
import { type PlanPour, planPours } from "./plan-pours.ts";
import {
  ICE_WATER_WITHIN,
  LABEL_TOLERANCES,
  LARGE_MEASURE,
  MEASURE_SHARE,
  UNLABELLED_TOLERANCE,
} from "./tolerance-table.ts";
import { serumOf, wheyOf } from "./wash.ts";

/** The likely range of the strength at each stage of a plan. */
export interface AbvIntervals {
  readonly mixed: StrengthInterval;
  /** Nothing where the spec is not washed. */
  readonly washed?: StrengthInterval;
  readonly final: StrengthInterval;
  readonly glass: StrengthInterval;
}

/**
 * How far a measured volume may be off.
 *
 * @param volume - ml, 0 or more
 * @returns ml either way
 * @source limits of serving measures with a line, second hand (`tolerance-table.ts`)
 * @limits the measure alone: a hand that pours past the line does worse
 * @example
 * measureWithin(300) // => 12.5
 */
export const measureWithin = (volume: number): number =>
  Math.min(MEASURE_SHARE * volume, LARGE_MEASURE.ml + LARGE_MEASURE.share * volume);

const labelWithin = ({ kind, strength }: Ingredient): number =>
  strength > 0 ? (LABEL_TOLERANCES[kind] ?? UNLABELLED_TOLERANCE) : 0;

/** A share of a liquid that was measured as so many ml. */
function measuredPart(liquid: Liquid, ml: number, share: number): UncertainPour {
  const part = scaleLiquid(liquid, share);
  const off = ml > 0 ? (measureWithin(ml) / ml) * volumeOf(part) : 0;
  return { liquid: part, volumeWithin: off, strengthWithin: 0 };
}

/** How much of what went into each vessel is in a stage's liquid: the rest stays in leaves and curd. */
interface Shares {
  readonly before: number;
  readonly milk: number;
  readonly after: number;
}

/** The same bottle feeds punch and top-up: its label is off once, not twice. */
function labelPours(pours: readonly PlanPour[], shares: Shares): readonly UncertainPour[] {
  const bottles = new Map<string, UncertainPour>();
  for (const { line, ingredient, perGram } of pours) {
    const g = line.before.g * shares.before + line.after.g * shares.after;
    const own = scaleLiquid(perGram, g);
    const same = bottles.get(ingredient.id);
    const liquid = same === undefined ? own : mix([same.liquid, own]);
    bottles.set(ingredient.id, {
      liquid,
      volumeWithin: 0,
      strengthWithin: labelWithin(ingredient),
    });
  }
  return [...bottles.values()];
}

function measurePours(pours: readonly PlanPour[], shares: Shares): readonly UncertainPour[] {
  return pours.flatMap(({ line: { before, after }, perGram }) => [
    measuredPart(scaleLiquid(perGram, before.g), before.ml, shares.before),
    measuredPart(scaleLiquid(perGram, after.g), after.ml, shares.after),
  ]);
}

/** Half-width of a range; the clamped side of one that meets 0 or 1 is not the whole of it. */
const half = ({ strength, low, high }: StrengthInterval): number =>
  Math.max(high - strength, strength - low);

function around(liquid: Liquid, halves: readonly number[]): StrengthInterval {
  const strength = strengthOf(liquid);
  const within = Math.hypot(...halves);
  return { strength, low: Math.max(0, strength - within), high: Math.min(1, strength + within) };
}

/** Labels and measures of all that is in a stage's liquid. */
function stageHalves(plan: Plan, pours: readonly PlanPour[], shares: Shares): readonly number[] {
  const { milk } = plan;
  const whey =
    milk === undefined ? [] : [measuredPart(wheyOf(milk.dairy, milk.ml), milk.ml, shares.milk)];
  const still = whey.map((pour) => ({ ...pour, volumeWithin: 0 }));
  return [
    half(strengthInterval([...labelPours(pours, shares), ...still])),
    half(strengthInterval([...measurePours(pours, shares), ...whey])),
  ];
}

/** What went in, summed over the lines; 1 where nothing did, so that a share of it is nothing. */
function wholeMl(pours: readonly PlanPour[], part: "before" | "after"): number {
  const whole = volumeOf(mix(pours.map(({ line, perGram }) => scaleLiquid(perGram, line[part].g))));
  return whole > 0 ? whole : 1;
}

/** How far the volume that the top-up meets may be off: measured, or only foreseen, ml. */
function clearWithin(plan: Plan): number {
  if (plan.yield === undefined) return 0;
  const { expected, low, high } = plan.yield;
  return plan.spec.topUp.rule === "fixed" ? (high - low) / 2 : measureWithin(expected);
}

function finalStrength(plan: Plan, halves: readonly number[]): StrengthInterval {
  const clear = plan.washed ?? plan.mixed;
  const met = strengthInterval([
    { liquid: clear, volumeWithin: clearWithin(plan), strengthWithin: 0 },
    { liquid: plan.heldBack, volumeWithin: 0, strengthWithin: 0 },
  ]);
  return around(plan.final, [...halves, half(met)]);
}

function glassStrength(plan: Plan, final: StrengthInterval): StrengthInterval {
  const { pour, dilution } = plan.spec.serve;
  const water = waterOf(plan.waterAdded);
  const off = dilution === undefined ? ICE_WATER_WITHIN * pour : measureWithin(plan.waterAdded);
  return strengthInterval([
    { liquid: portion(plan.final, pour), volumeWithin: 0, strengthWithin: half(final) },
    { liquid: water, volumeWithin: Math.min(off, plan.waterAdded), strengthWithin: 0 },
  ]);
}

/**
 * The likely range of the strength at each stage of a plan: labels may be off by what the law allows,
 * measures by what serving measures may, the volume that the top-up meets by how it was known, the
 * water of the ice by what the fit leaves open.
 *
 * @returns v/v with its range; the range means what the tolerances mean, limits in, near-limits out
 * @throws RangeError when the plan lacks an ingredient of its own
 * @source root sum of squares as `strengthInterval`; tolerances and their sources in
 * `tolerance-table.ts`
 * @limits a mistake common to all pours is not covered; juice, tea and milk are taken to hold no
 * alcohol, and weighed goods to be exact
 */
export function abvIntervals(plan: Plan): AbvIntervals {
  const pours = planPours(plan);
  const strain = volumeOf(plan.mixed) / wholeMl(pours, "before");
  const after = volumeOf(plan.heldBack) / wholeMl(pours, "after");
  const mixed = around(plan.mixed, stageHalves(plan, pours, { before: strain, milk: 0, after: 0 }));
  const { milk, washed } = plan;
  if (milk === undefined || washed === undefined) {
    const final = finalStrength(plan, stageHalves(plan, pours, { before: strain, milk: 0, after }));
    return { mixed, final, glass: glassStrength(plan, final) };
  }
  const serum = serumOf({ punch: plan.mixed, dairy: milk.dairy, milk: milk.ml });
  const through = volumeOf(washed) / volumeOf(serum);
  const shares = { before: strain * through, milk: through, after: 0 };
  const final = finalStrength(plan, stageHalves(plan, pours, { ...shares, after }));
  return {
    mixed,
    washed: around(washed, stageHalves(plan, pours, shares)),
    final,
    glass: glassStrength(plan, final),
  };
}
