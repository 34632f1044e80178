import { ETHANOL_DENSITY, ethanolWaterDensity } from "./ethanol-water.ts";
import { type Liquid, strengthOf, volumeOf } from "./liquid.ts";
import { mix, portion, scaleLiquid } from "./mixing.ts";

/** A pour, with how far off it may be. */
export interface UncertainPour {
  readonly liquid: Liquid;
  /** ml either way: what the jigger or the scale allows */
  readonly volumeWithin: number;
  /** v/v either way: what the label allows */
  readonly strengthWithin: number;
}

/** A strength with its likely range, v/v. */
export interface StrengthInterval {
  readonly strength: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Label tolerance for spirits, v/v either way: 0.3 % vol, Regulation (EU) No 1169/2011, Annex XII, read
 * in a copy of its German text; the same in US rules, from memory.
 */
export const LABEL_TOLERANCE = 0.003;

/** Size of the small steps that an effect is read from. */
const STEP = 1e-4;

/** The same volume, stronger by about `by`: ethanol in the place of water. */
function strengthened(liquid: Liquid, by: number): Liquid {
  const volume = volumeOf(liquid);
  const litres = (volume * by) / 1000;
  const changed = {
    ...liquid,
    ethanol: liquid.ethanol + litres * ETHANOL_DENSITY,
    water: liquid.water - litres * ethanolWaterDensity(0),
  };
  // Strong spirit shrinks as it takes up water, by a fifth of that water: what is poured does not.
  return portion(changed, volume);
}

/** A step up in strength, or down where there is not the water to give up for it. */
function stepFor(liquid: Liquid): number {
  const gives = (volumeOf(liquid) * STEP * ethanolWaterDensity(0)) / 1000;
  return liquid.water > 2 * gives ? STEP : -STEP;
}

/** Other pours with one of them replaced. */
const mixedWith = (pours: readonly UncertainPour[], at: number, instead: Liquid): number =>
  strengthOf(mix(pours.map(({ liquid }, index) => (index === at ? instead : liquid))));

/**
 * Strength of a mixture with the range that labels and jiggers leave open.
 *
 * @param pours - each with its tolerances; they are taken as independent of each other
 * @returns the strength and its range, held within 0 and 1; an empty mixture gives 0, 0, 0
 * @source root sum of squares of each tolerance times its effect, the effect by trying a small step
 * (the usual propagation of uncertainty)
 * @limits the range means what the tolerances mean: limits in, near-limits out (less likely to be
 * passed than any one of them); a fault common to all pours, such as a short jigger, is not covered
 */
export function strengthInterval(pours: readonly UncertainPour[]): StrengthInterval {
  const strength = strengthOf(mix(pours.map(({ liquid }) => liquid)));
  let squares = 0;
  for (const [index, { liquid, volumeWithin, strengthWithin }] of pours.entries()) {
    const volume = volumeOf(liquid);
    if (!(volume > 0)) continue;
    if (volumeWithin > 0) {
      const more = mixedWith(pours, index, scaleLiquid(liquid, 1 + STEP)) - strength;
      squares += ((more / STEP) * (volumeWithin / volume)) ** 2;
    }
    // What is exact is not tried out either: sugar or acid alone has no strength to step from.
    if (strengthWithin > 0) {
      const stronger = strengthened(liquid, stepFor(liquid));
      const rise = mixedWith(pours, index, stronger) - strength;
      const ownRise = strengthOf(stronger) - strengthOf(liquid);
      squares += ((rise / ownRise) * strengthWithin) ** 2;
    }
  }
  const within = Math.sqrt(squares);
  return {
    strength,
    low: Math.max(0, strength - within),
    high: Math.min(1, strength + within),
  };
}
