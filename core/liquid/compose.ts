import { ACID_NAMES, type AcidMasses } from "../quantity/acid-name.ts";
import { requireWithin } from "../quantity/require-within.ts";
import { rootBetween } from "../quantity/solve.ts";
import { ETHANOL_DENSITY } from "./ethanol-water.ts";
import { type Liquid, massOf, NOTHING, volumeOf } from "./liquid.ts";
import { scaleLiquid } from "./mixing.ts";

/** What a label, a refractometer or a titration says about a liquid, whatever its amount. */
export interface Makeup {
  /** v/v at 20 degrees C, 0 to 1 */
  readonly strength: number;
  /** g per litre */
  readonly sugarPerLitre: number;
  /** g per litre of each acid */
  readonly acids: AcidMasses;
  /** mol per litre */
  readonly cation: number;
  /** g per litre */
  readonly solidsPerLitre: number;
  /** kg/m3 at 20 degrees C, when it was measured */
  readonly density?: number;
}

/** A density this far from the model's, as a share, is a slip of the pen and not a measurement. */
export const DENSITY_BELIEVED = 0.05;

function withoutWater(volume: number, makeup: Makeup): Liquid {
  const litres = volume / 1000;
  requireWithin(makeup.strength, 0, 1, "the strength (v/v)");
  requireWithin(makeup.sugarPerLitre, 0, 2000, "sugar in g per litre");
  requireWithin(makeup.solidsPerLitre, 0, 2000, "solids in g per litre");
  requireWithin(makeup.cation, 0, 100, "cation in mol per litre");
  const acids = ACID_NAMES.flatMap((name) => {
    const perLitre = makeup.acids[name];
    if (perLitre === undefined) return [];
    requireWithin(perLitre, 0, 2000, `${name} acid in g per litre`);
    return [[name, perLitre * litres] as const];
  });
  return {
    ethanol: litres * makeup.strength * ETHANOL_DENSITY,
    water: 0,
    sugar: litres * makeup.sugarPerLitre,
    acids: Object.fromEntries(acids),
    cation: litres * makeup.cation,
    solids: litres * makeup.solidsPerLitre,
  };
}

/** Water that fills the rest of the volume, g. */
function waterToFill(dry: Liquid, volume: number): number {
  const excess = (water: number): number => volumeOf({ ...dry, water }) - volume;
  const over = excess(0);
  if (over >= 0) {
    if (over <= 1e-9 * volume) return 0;
    throw new RangeError(
      `what is dissolved must fit into ${volume} ml, got ${volume + over} ml before any water`,
    );
  }
  return rootBetween(excess, 0, 1.2 * volume, 1e-10 * volume);
}

/** Water that makes up the mass which a measured density gives, g. */
function waterByDensity(dry: Liquid, volume: number, density: number): number {
  const water = (volume * density) / 1000 - massOf(dry);
  if (!(water >= -1e-9 * volume)) {
    throw new RangeError(
      `a density of ${density} kg/m3 must leave room for water, got ${water} g in ${volume} ml`,
    );
  }
  const liquid = { ...dry, water: Math.max(0, water) };
  const by = volumeOf(liquid) / volume - 1;
  if (Math.abs(by) > DENSITY_BELIEVED) {
    throw new RangeError(
      `a density must fit what is dissolved, within ${DENSITY_BELIEVED}, got ${density} kg/m3, off by ${by}`,
    );
  }
  return liquid.water;
}

/**
 * A liquid from what is known about it: the water is what fills the rest.
 *
 * @param measures - volume in ml at 20 degrees C, with what the label or the meter says; with a
 * density the water follows from the mass instead
 * @returns the liquid
 * @throws RangeError when a figure is out of range, when what is dissolved does not fit into the
 * volume, or when the density is more than 5 % off what the rest gives
 * @source as `volumeOf`, solved for the water
 * @limits with a density, `volumeOf` gives back the volume only as well as the density fits the model
 * @example
 * densityOf(liquidOf({ volume: 700, strength: 0.25, sugarPerLitre: 250, acids: {}, cation: 0, solidsPerLitre: 0 })) // => 1063.54 ± 0.02
 */
export function liquidOf(measures: Makeup & { readonly volume: number }): Liquid {
  const { volume, density } = measures;
  requireWithin(volume, 0, Number.MAX_VALUE, "a volume in ml");
  if (volume === 0) return NOTHING;
  const dry = withoutWater(volume, measures);
  const water =
    density === undefined ? waterToFill(dry, volume) : waterByDensity(dry, volume, density);
  return { ...dry, water };
}

/**
 * The same as `liquidOf` for an amount that was weighed.
 *
 * @param measures - mass in g, with what the label or the meter says
 * @returns the liquid
 * @throws RangeError as `liquidOf`
 * @source as `liquidOf`
 * @example
 * volumeOf(liquidOfMass({ mass: 948.05, strength: 0.4, sugarPerLitre: 0, acids: {}, cation: 0, solidsPerLitre: 0 })) // => 1000 ± 0.01
 */
export function liquidOfMass(measures: Makeup & { readonly mass: number }): Liquid {
  const { mass, ...makeup } = measures;
  requireWithin(mass, 0, Number.MAX_VALUE, "a mass in g");
  const litre = liquidOf({ ...makeup, volume: 1000 });
  return scaleLiquid(litre, mass / massOf(litre));
}
