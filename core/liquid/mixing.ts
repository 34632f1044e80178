import { ACID_NAMES, type AcidMasses, type AcidName } from "../quantity/acid-name.ts";
import { requireWithin } from "../quantity/require-within.ts";
import { ethanolWaterDensity } from "./ethanol-water.ts";
import { type Liquid, NOTHING, volumeOf } from "./liquid.ts";

/** Every acid that one of the sets holds, with what `amount` says of it. */
function acidsBy(sets: readonly AcidMasses[], amount: (name: AcidName) => number): AcidMasses {
  const present = ACID_NAMES.filter((name) => sets.some((set) => set[name] !== undefined));
  return Object.fromEntries(present.map((name) => [name, amount(name)]));
}

/**
 * Liquids poured together: masses add.
 *
 * @param liquids - any number; none gives an empty vessel
 * @returns the mixture
 * @example
 * volumeOf(mix([waterOf(50), waterOf(25)])) // => 75 ± 0.000001
 */
export function mix(liquids: readonly Liquid[]): Liquid {
  const sum = (of: (liquid: Liquid) => number): number =>
    liquids.reduce((total, liquid) => total + of(liquid), 0);
  return {
    ethanol: sum((liquid) => liquid.ethanol),
    water: sum((liquid) => liquid.water),
    sugar: sum((liquid) => liquid.sugar),
    acids: acidsBy(
      liquids.map((liquid) => liquid.acids),
      (name) => sum((liquid) => liquid.acids[name] ?? 0),
    ),
    cation: sum((liquid) => liquid.cation),
    solids: sum((liquid) => liquid.solids),
  };
}

/**
 * More or less of the same liquid.
 *
 * @param liquid - any amount
 * @param factor - 0 or more
 * @returns every mass times the factor
 * @throws RangeError when the factor is negative or not finite
 * @example
 * volumeOf(scaleLiquid(waterOf(50), 3)) // => 150 ± 0.000001
 */
export function scaleLiquid(liquid: Liquid, factor: number): Liquid {
  requireWithin(factor, 0, Number.MAX_VALUE, "a factor");
  return {
    ethanol: liquid.ethanol * factor,
    water: liquid.water * factor,
    sugar: liquid.sugar * factor,
    acids: acidsBy([liquid.acids], (name) => (liquid.acids[name] ?? 0) * factor),
    cation: liquid.cation * factor,
    solids: liquid.solids * factor,
  };
}

/**
 * A measured pour of a liquid: the same composition, that volume.
 *
 * @param liquid - any amount above 0
 * @param volumeMl - ml at 20 degrees C
 * @returns the pour
 * @throws RangeError when the vessel is empty and the pour is not, or on a negative volume
 * @example
 * volumeOf(portion(waterOf(1000), 45)) // => 45 ± 0.000001
 */
export function portion(liquid: Liquid, volumeMl: number): Liquid {
  requireWithin(volumeMl, 0, Number.MAX_VALUE, "the volume of a pour in ml");
  if (volumeMl === 0) return NOTHING;
  const whole = volumeOf(liquid);
  if (whole === 0) throw new RangeError(`a pour of ${volumeMl} ml needs a liquid, got none`);
  return scaleLiquid(liquid, volumeMl / whole);
}

/**
 * Water by volume.
 *
 * @param volumeMl - ml at 20 degrees C
 * @returns the water
 * @throws RangeError on a negative volume
 * @source OIML R 22 (1975): 998.201 kg/m3 at 20 degrees C
 * @example
 * massOf(waterOf(1000)) // => 998.2 ± 0.01
 */
export function waterOf(volumeMl: number): Liquid {
  requireWithin(volumeMl, 0, Number.MAX_VALUE, "a volume of water in ml");
  return { ...NOTHING, water: (volumeMl * ethanolWaterDensity(0)) / 1000 };
}
