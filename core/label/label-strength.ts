/** Steps a label's strength is rounded to, v/v. */
const STEP = 0.005;

/**
 * The strength as a label gives it, to the nearest 0.5 % vol.
 *
 * @param strength - as worked out, v/v, 0 to 1
 * @returns v/v, 0 to 1
 * @source label tolerances: ±0.3 % vol for spirits (27 CFR 19.356; directive 87/250/EEC, kept by
 *   Regulation (EU) No 1169/2011, Annex XII, from memory) and ±1.5 % vol in the EU where plants or
 *   fruit are steeped. Rounding alone moves a figure by 0.25 % vol at most, inside the narrower one
 * @limits the figure rounded is worked out from the ingredients, not measured: where the law wants
 *   a strength on the label, it wants a laboratory's
 * @example
 * labelStrength(0.2237) // => 0.225 ± 0.000001
 */
export const labelStrength = (strength: number): number =>
  Math.round(strength / STEP) / Math.round(1 / STEP);
