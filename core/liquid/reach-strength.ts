import { requireWithin } from "../quantity/require-within.ts";
import { accepted, type Result, refused } from "../quantity/result.ts";
import { rootBetween } from "../quantity/solve.ts";
import { type Liquid, strengthOf, volumeOf } from "./liquid.ts";
import { mix, portion, scaleLiquid, waterOf } from "./mixing.ts";

/** What to pour, and what it makes. */
export interface Addition {
  /** ml at 20 degrees C to pour in */
  readonly volume: number;
  /** base and addition together */
  readonly liquid: Liquid;
}

/**
 * Pours `added` into `base` until the strength is `target`, which must lie between the two.
 * The unknown is the share of the addition in the volumes poured: 0 to 1, so the bracket is exact.
 */
function pourUntil(base: Liquid, added: Liquid, target: number): Addition {
  const unitOfBase = portion(base, 1);
  const unitOfAdded = portion(added, 1);
  const off = (share: number): number =>
    strengthOf(mix([scaleLiquid(unitOfBase, 1 - share), scaleLiquid(unitOfAdded, share)])) - target;
  const share = rootBetween(off, 0, 1, 1e-13);
  const volume = (share / (1 - share)) * volumeOf(base);
  return { volume, liquid: mix([base, portion(added, volume)]) };
}

function requireSomething(base: Liquid): void {
  if (!(volumeOf(base) > 0)) throw new RangeError("the base must hold something, got 0 ml");
}

/**
 * Spirit that brings a base up to a strength, contraction included.
 *
 * @param base - what is there, after the wash for instance
 * @param spirit - any amount of what is poured in; only its composition counts
 * @param target - strength wanted, v/v at 20 degrees C
 * @returns ml of spirit and the result; or a refusal whose `nearest` is the closest strength that can
 * be had: the spirit's own (never quite reached) or the base as it is
 * @throws RangeError when the base is empty or the target is not 0 to 1
 * @source mass balance with `volumeOf`, solved
 * @limits as `volumeOf`
 */
export function spiritToReach(
  base: Liquid,
  spirit: Liquid,
  target: number,
): Result<Addition, "target-above-spirit" | "target-below-base"> {
  requireSomething(base);
  requireWithin(target, 0, 1, "the strength wanted (v/v)");
  const from = strengthOf(base);
  const most = strengthOf(spirit);
  if (target < from) return refused("target-below-base", { target, nearest: from });
  if (target === from) return accepted({ volume: 0, liquid: base });
  if (target >= most) {
    return refused("target-above-spirit", { target, nearest: Math.max(from, most) });
  }
  return accepted(pourUntil(base, spirit, target));
}

/**
 * Water that brings a base down to a strength, contraction included.
 *
 * @param base - what is there
 * @param target - strength wanted, v/v at 20 degrees C
 * @returns ml of water and the result; or a refusal: above the base (`nearest` is the base's
 * strength), or zero, which no amount of water reaches
 * @throws RangeError when the base is empty or the target is not 0 to 1
 * @source mass balance with `volumeOf`, solved
 * @limits as `volumeOf`
 */
export function waterToReach(
  base: Liquid,
  target: number,
): Result<Addition, "target-above-base" | "target-zero"> {
  requireSomething(base);
  requireWithin(target, 0, 1, "the strength wanted (v/v)");
  const from = strengthOf(base);
  if (target > from) return refused("target-above-base", { target, nearest: from });
  if (target === from) return accepted({ volume: 0, liquid: base });
  if (target === 0) return refused("target-zero", { target, nearest: 0 });
  return accepted(pourUntil(base, waterOf(1), target));
}
