import { dairyOf } from "../acid/milk.ts";
import { volumeOf } from "../liquid/liquid.ts";
import { measured } from "../quantity/amount.ts";
import { accepted, type Result, refused } from "../quantity/result.ts";
import type { Written } from "./batch-amounts.ts";
import { pouredShare, type Trial, trialAt } from "./batch-trial.ts";
import type { HouseRules } from "./house-rules.ts";
import type { BatchSize, Spec } from "./spec.ts";
import type { TopUpRefusal } from "./top-up.ts";

/** Why a size cannot be reached. */
export type SizeRefusal =
  | TopUpRefusal
  | "size-too-small"
  | "spec-holds-nothing"
  | "stock-unused"
  | "dry-needs-weight";

/** What a size fixes: so much of something, and how a trial's own is read. */
interface Goal {
  readonly amount: number;
  readonly of: (trial: Trial, scale: number) => number;
}

/** Share of the size asked for that the batch may be off by: far below what can be poured. */
const CLOSE_ENOUGH = 1e-9;
/** A batch so small that the filters drink it up never gets there. */
const MOST_STEPS = 60;

const inTheBottle = (amount: number): Goal => ({ amount, of: (trial) => volumeOf(trial.final) });

type Stock = Extract<BatchSize, { by: "stock" }>;

/** All of an ingredient on hand, wherever the spec uses it: in its lines, held back, as its milk. */
function stockGoal(
  stock: Stock,
  spec: Spec,
  written: Written,
  house: HouseRules,
): Result<Goal, SizeRefusal> {
  const onHand = measured(stock.amount, house.ounce);
  const lines = written.lines.filter(({ ingredient }) => ingredient.id === stock.ingredientId);
  const [dry] = lines.filter(({ ingredient }) => ingredient.kind === "dry");
  if (dry !== undefined && onHand.kind === "volume") {
    return refused("dry-needs-weight", { name: dry.ingredient.name });
  }
  const size = (ml: number, g: number): number => (onHand.kind === "volume" ? ml : g);
  const { dairy } = written;
  const milk = dairy?.dairy !== undefined && dairy.id === stock.ingredientId ? written.milk : 0;
  const perScale = size(milk, milk * dairyOf(dairy?.dairy ?? "whole").densityKgPerL);
  const of = (trial: Trial, scale: number): number => {
    const share = pouredShare(written, trial, scale);
    return lines.reduce((sum, { line, portion: { ml, g } }) => {
      const held = spec.wash === undefined ? 0 : line.heldBack;
      return sum + size(ml, g) * scale * (1 - held + held * share);
    }, perScale * scale);
  };
  return accepted({ amount: onHand.kind === "volume" ? onHand.ml : onHand.g, of });
}

function goalOf(
  size: BatchSize,
  spec: Spec,
  written: Written,
  house: HouseRules,
): Result<Goal, SizeRefusal> {
  switch (size.by) {
    case "serves":
      return accepted(inTheBottle(size.serves * spec.serve.pour));
    case "bottles":
      return accepted(inTheBottle(size.bottles * size.size));
    case "volume":
      return accepted(inTheBottle(size.volume));
    case "vessel":
      return accepted({
        amount: size.vessel,
        of: ({ mixed, wash }) => volumeOf(mixed) + (wash?.milk ?? 0),
      });
    case "stock":
      return stockGoal(size, spec, written, house);
  }
}

/** A batch of the size that was asked for. */
export interface Sized {
  readonly scale: number;
  readonly trial: Trial;
}

/**
 * The scale at which a batch is as big as was asked for. Everything is proportional to the scale but
 * for what the filters keep, so each step with the proportional slope comes far closer.
 *
 * @param spec - what is made
 * @param written - its amounts as written
 * @param size - what is to come out, or what is to go in
 * @param house - ounce, what curd and filters keep
 * @returns batch amounts divided by the amounts as written, with the batch at that scale
 * @source proportion, solved by repeated steps to 1e-9 of the size
 */
export function scaleFor(
  spec: Spec,
  written: Written,
  size: BatchSize,
  house: HouseRules,
): Result<Sized, SizeRefusal> {
  const goal = goalOf(size, spec, written, house);
  if (!goal.ok) return goal;
  const { amount, of } = goal.value;
  if (!(amount > 0)) return refused("size-too-small");
  const lossless = trialAt(spec, written, { ...house, perFilter: 0 }, 1);
  if (!lossless.ok) return lossless;
  const perScale = of(lossless.value, 1);
  if (!(perScale > 0)) return refused(size.by === "stock" ? "stock-unused" : "spec-holds-nothing");
  let scale = amount / perScale;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const trial = trialAt(spec, written, house, scale);
    if (!trial.ok) return trial;
    const short = amount - of(trial.value, scale);
    if (Math.abs(short) <= CLOSE_ENOUGH * amount) return drinkable(scale, trial.value);
    scale += short / perScale;
  }
  return refused("size-too-small");
}

/** A batch that curd and filters drink up is none, whatever was held back for it. */
function drinkable(scale: number, trial: Trial): Result<Sized, SizeRefusal> {
  return trial.clearMl > 0 ? accepted({ scale, trial }) : refused("size-too-small");
}
