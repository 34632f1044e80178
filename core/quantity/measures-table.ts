/**
 * Measures a person may type, in ml or g. Exact US customary values follow from the 231 cubic inch
 * gallon (NIST Handbook 44, appendix C). Barspoon, dash and drop: common practice, no source.
 * Date read: 2026-11-25.
 */
export const US_FLUID_OUNCE = 29.5735295625;

/** The ounce most bars pour: a 30 ml jigger. Common practice, no source. */
export const BAR_OUNCE = 30;

/** Units of volume with their ml; `oz` depends on the house's ounce and stands apart. */
export const VOLUME_MEASURES = {
  ml: 1,
  cl: 10,
  dl: 100,
  l: 1000,
  dash: 0.8,
  drop: 0.05,
  barspoon: 5,
  tsp: 4.92892159375,
  tbsp: 14.78676478125,
  cup: 236.5882365,
  pint: 473.176473,
  quart: 946.352946,
  gallon: 3785.411784,
} as const;

/** Units of mass with their g. Pound: NIST Handbook 44, appendix C. */
export const MASS_MEASURES = { g: 1, kg: 1000, mg: 0.001, lb: 453.59237 } as const;

/** A unit of volume that people write. */
export type VolumeUnit = keyof typeof VOLUME_MEASURES | "oz";
/** A unit of mass that people write. */
export type MassUnit = keyof typeof MASS_MEASURES;
/** Any unit a spec line may carry. */
export type Unit = VolumeUnit | MassUnit;
