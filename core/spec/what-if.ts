import { measured } from "../quantity/amount.ts";
import type { Ounce } from "../quantity/ounce.ts";
import type { Cupboard } from "./batch-amounts.ts";
import type { HouseRules } from "./house-rules.ts";
import { type PlanRefusal, planBatch } from "./plan-batch.ts";
import type { BatchSize, Spec, SpecLine, TopUpRule } from "./spec.ts";

/** What is tried out beside a spec. What is left out stays as the spec has it. */
export interface Changes {
  /** Litres of milk per litre of punch. */
  readonly ratio?: number;
  /** Share held back of a line, by its id. */
  readonly heldBack?: Readonly<Record<string, number>>;
  readonly topUp?: TopUpRule;
  readonly size?: BatchSize;
}

/**
 * A spec with what is tried out, its version as before.
 *
 * @param changes - ratio is left out where nothing is washed; lines it does not know are left alone
 */
export function withChanges(spec: Spec, changes: Changes): Spec {
  const { ratio = spec.wash?.ratio, heldBack = {}, topUp = spec.topUp } = changes;
  const lines = spec.lines.map((line) => ({
    ...line,
    heldBack: heldBack[line.id] ?? line.heldBack,
  }));
  if (spec.wash === undefined || ratio === undefined) return { ...spec, lines, topUp };
  return { ...spec, lines, topUp, wash: { ...spec.wash, ratio } };
}

const sameRule = (a: TopUpRule, b: TopUpRule): boolean =>
  a.rule === b.rule && (a.rule !== "strength" || b.rule !== "strength" || a.target === b.target);

/** Sizes are flat records of words and numbers, but for the amount on hand. */
const sameSize = (a: BatchSize, b: BatchSize): boolean => JSON.stringify(a) === JSON.stringify(b);

/**
 * Changes that change something: a control put back where the spec has it changes nothing.
 *
 * @param spec - as it stands
 * @param size - as planned
 */
export function realChanges(spec: Spec, size: BatchSize, changes: Changes): Changes {
  const { ratio, topUp } = changes;
  const moved = spec.lines.flatMap((line) => {
    const share = changes.heldBack?.[line.id] ?? line.heldBack;
    return share === line.heldBack ? [] : [[line.id, share] as const];
  });
  return {
    ...(ratio === undefined || ratio === spec.wash?.ratio ? {} : { ratio }),
    ...(moved.length === 0 ? {} : { heldBack: Object.fromEntries(moved) }),
    ...(topUp === undefined || sameRule(topUp, spec.topUp) ? {} : { topUp }),
    ...(changes.size === undefined || sameSize(changes.size, size) ? {} : { size: changes.size }),
  };
}

/** ml of a line as written; 0 for what is weighed, which has no place in a share of volumes. */
function mlOf({ amount }: SpecLine, ounce: Ounce): number {
  const size = measured(amount, ounce);
  return size.kind === "volume" ? size.ml : 0;
}

/** Lines that the split concerns: those that hold something back already. */
const splitLines = (spec: Spec): readonly SpecLine[] =>
  spec.lines.filter((line) => line.heldBack > 0);

/**
 * Share of the split lines' volume that is held back until after the wash.
 *
 * @param ounce - which ounce the house pours
 * @returns 0 to 1; 0 where no measured line holds anything back
 */
export function heldBackShare(spec: Spec, ounce: Ounce): number {
  const lines = splitLines(spec).map((line) => ({ ml: mlOf(line, ounce), share: line.heldBack }));
  const all = lines.reduce((sum, { ml }) => sum + ml, 0);
  return all > 0 ? lines.reduce((sum, { ml, share }) => sum + ml * share, 0) / all : 0;
}

/**
 * Moves all held-back shares together until so much of the split lines is held back. Downwards each
 * shrinks in proportion, upwards what is poured before the wash does: none leaves 0 to 1, and the
 * line that was held back most stays so.
 *
 * @param spec - with at least one line that holds something back
 * @param share - of the split lines' volume, 0 to 1
 * @param ounce - which ounce the house pours
 * @returns the share of each split line, by its id
 * @throws RangeError when the share is not 0 to 1
 * @source proportion
 */
export function heldBackTogether(
  spec: Spec,
  share: number,
  ounce: Ounce,
): Readonly<Record<string, number>> {
  if (!(share >= 0 && share <= 1)) {
    throw new RangeError(`a held-back share must lie between 0 and 1, got ${share}`);
  }
  const was = heldBackShare(spec, ounce);
  const moved = (own: number): number =>
    share <= was
      ? was > 0
        ? (own * share) / was
        : share
      : 1 - ((1 - own) * (1 - share)) / (1 - was);
  return Object.fromEntries(splitLines(spec).map((line) => [line.id, moved(line.heldBack)]));
}

/** Steps of a target strength that a person would ask for, v/v. */
const PER_MILLE = 1000;
/** So close to a whole step that it is that step, in steps. */
const STEP_SLIP = 0.01;

function nextTo(refusal: PlanRefusal, nearest: number): number | undefined {
  const steps = nearest * PER_MILLE;
  // The spirit's own strength is never quite reached; the washed punch's is, with no top-up.
  if (refusal === "target-above-spirit") return Math.floor(steps - 0.5) / PER_MILLE;
  if (refusal === "target-below-base") return Math.ceil(steps + STEP_SLIP) / PER_MILLE;
  return undefined;
}

/**
 * The nearest top-up that can be had where a spec's target strength cannot: the closest strength, in
 * steps of 0.1 % vol, or everything in proportion where no strength will do.
 *
 * @returns nothing where the batch can be planned, or its top-up is not what is wrong
 * @source `nearest` as in `spiritToReach`, tried out
 */
export function nearestTopUp(
  spec: Spec,
  cupboard: Cupboard,
  size: BatchSize,
  house: HouseRules,
): TopUpRule | undefined {
  const plans = (topUp: TopUpRule) => planBatch({ ...spec, topUp }, cupboard, size, house);
  const plan = plans(spec.topUp);
  if (plan.ok || spec.topUp.rule !== "strength") return undefined;
  const target = nextTo(plan.refusal, Number(plan.about.nearest));
  const strengths: readonly TopUpRule[] =
    target !== undefined && target > 0 && target < 1 ? [{ rule: "strength", target }] : [];
  const ways: readonly TopUpRule[] = [...strengths, { rule: "proportion" }];
  return ways.find((topUp) => plans(topUp).ok);
}
