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

/** How people write the units, lower case. */
export const UNIT_WORDS: Readonly<Record<string, Unit>> = {
  ml: "ml",
  mls: "ml",
  cc: "ml",
  millilitre: "ml",
  millilitres: "ml",
  milliliter: "ml",
  milliliters: "ml",
  cl: "cl",
  dl: "dl",
  l: "l",
  lt: "l",
  ltr: "l",
  litre: "l",
  litres: "l",
  liter: "l",
  liters: "l",
  oz: "oz",
  ounce: "oz",
  ounces: "oz",
  ozs: "oz",
  floz: "oz",
  fluidoz: "oz",
  flounce: "oz",
  flounces: "oz",
  fluidounce: "oz",
  fluidounces: "oz",
  dash: "dash",
  dashes: "dash",
  ds: "dash",
  drop: "drop",
  drops: "drop",
  barspoon: "barspoon",
  barspoons: "barspoon",
  bsp: "barspoon",
  tsp: "tsp",
  teaspoon: "tsp",
  teaspoons: "tsp",
  tbsp: "tbsp",
  tablespoon: "tbsp",
  tablespoons: "tbsp",
  cup: "cup",
  cups: "cup",
  pint: "pint",
  pt: "pint",
  pints: "pint",
  quart: "quart",
  quarts: "quart",
  qt: "quart",
  gallon: "gallon",
  gallons: "gallon",
  gal: "gallon",
  g: "g",
  gr: "g",
  gram: "g",
  grams: "g",
  gramme: "g",
  grammes: "g",
  kg: "kg",
  kilo: "kg",
  kilos: "kg",
  mg: "mg",
  lb: "lb",
  lbs: "lb",
  pound: "lb",
  pounds: "lb",
};

/** A unit of volume that people write. */
export type VolumeUnit = keyof typeof VOLUME_MEASURES | "oz";
/** A unit of mass that people write. */
export type MassUnit = keyof typeof MASS_MEASURES;
/** Any unit a spec line may carry. */
export type Unit = VolumeUnit | MassUnit;
