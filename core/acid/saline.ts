import { requireWithin } from "../quantity/require-within.ts";
import { accepted, type Result, refused } from "../quantity/result.ts";

/** Salt no longer dissolves past 26.4 wt% at 20 degrees C (from memory); the table ends at 26. */
const SATURATED = 0.26;
/** Far above any vessel, ml. */
const MOST_VOLUME = 1e6;

/** What to weigh together. */
export interface Saline {
  readonly saltG: number;
  readonly waterG: number;
}

/** Density of salt water at 20 degrees C, kg/m3: our quadratic through the table named in `salineOf`. */
const salineDensity = (share: number): number => 998.2 + 698.6 * share + 252.2 * share * share;

/**
 * Salt and water for a saline solution by weight.
 *
 * @param volume - wanted, ml
 * @param share - of salt in the mass, 0 to 1 (0.2 for a 20 % saline)
 * @returns grams of each, or a refusal past what dissolves
 * @throws RangeError when the volume is negative or the share outside 0 to 1
 * @source density of sodium chloride solutions at 20 degrees C: Poradnik fizykochemiczny (WNT 1974), as
 * given on a university page (opened)
 * @limits within 0.4 kg/m3 of that table from 0 to 26 wt%; takes the salt as dry
 * @example
 * salineOf(100, 0.2).value.saltG // => 22.96 ± 0.02
 */
export function salineOf(
  volume: number,
  share: number,
): Result<Saline, "more-salt-than-dissolves"> {
  requireWithin(volume, 0, MOST_VOLUME, "a volume of saline in ml");
  requireWithin(share, 0, 1, "a share of salt (0 to 1)");
  if (share > SATURATED) return refused("more-salt-than-dissolves", { share, most: SATURATED });
  const mass = (volume * salineDensity(share)) / 1000;
  return accepted({ saltG: mass * share, waterG: mass * (1 - share) });
}
