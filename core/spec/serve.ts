import { blendWithIce, preDilute, type Served, shakeOnIce, stirOnIce } from "../liquid/ice.ts";
import { type Liquid, volumeOf } from "../liquid/liquid.ts";
import { waterOf } from "../liquid/mixing.ts";
import type { Spec } from "./spec.ts";

/** A bottle straight from the fridge, degrees C. */
const FRIDGE = 4;
/**
 * Water that a pour takes up on one large cube by the time it is half drunk, per ml.
 * @source judgement: between none and a stirred drink's share
 */
const OVER_ICE = 0.12;
/**
 * Ice blended in, g per ml poured, where the house gives none.
 * @source judgement: about as much ice as drink
 */
const BLENDED = 1.1;

/** Thinned beforehand; what holds no water at all neither freezes nor melts ice, and stays as it is. */
const thinned = (pour: Liquid, waterMl: number, temperature: number): Served =>
  pour.water + waterMl > 0
    ? preDilute(pour, waterMl, temperature)
    : { waterAdded: 0, liquid: pour, temperature, ice: 0 };

/**
 * One pour as it stands in the glass.
 *
 * @param pour - from the bottle, at fridge temperature
 * @param serve - the spec's serve; a dilution the house measured itself counts before any model
 * @returns water added (ml), what is in the glass, its temperature (degrees C) and its share of ice
 * @source stirred and shaken: the published fits in `ice.ts`; blended: heat balance; over ice: judgement
 * @limits as `stirOnIce` and `blendWithIce`; a diluted drink is taken to be at 0 degrees once stirred or
 *   shaken, at 4 otherwise
 * @example
 * servePour(waterOf(100), { pour: 100, method: "over-ice", glass: "", garnish: "" }).waterAdded // => 12 ± 0.001
 */
export function servePour(pour: Liquid, serve: Spec["serve"]): Served {
  const own = serve.dilution;
  const ml = volumeOf(pour);
  switch (serve.method) {
    case "straight":
      return thinned(pour, (own ?? 0) * ml, FRIDGE);
    case "over-ice":
      return thinned(pour, (own ?? OVER_ICE) * ml, FRIDGE);
    case "blended": {
      const ice = own === undefined ? BLENDED * ml : waterOf(own * ml).water;
      return pour.water > 0 ? blendWithIce(pour, ice, FRIDGE) : thinned(pour, ice, 0);
    }
    case "stirred":
      return own === undefined ? stirOnIce(pour, FRIDGE) : thinned(pour, own * ml, 0);
    case "shaken":
      return own === undefined ? shakeOnIce(pour, FRIDGE) : thinned(pour, own * ml, 0);
  }
}
