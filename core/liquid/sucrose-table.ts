/**
 * Coefficients of the density of sucrose solutions and of water.
 *
 * Source: the form of ICUMSA SPS-4 (1998, after Emmerich and Rosenbruch, PTB), coefficients as in
 * Bubnik, Kadlec, Urban, Bruhns, Sugar Technologists Manual (1995), p. 164, read in two public copies
 * (they differ in b(0,3): -3.9643 and -3.9646, below 0.0003 kg/m3); SPS-4 itself was not opened.
 * Read 2026-11. Figures, not protected.
 */

/** b(j, i), kg/m3: row j belongs to ((t - 20)/100)^j; its columns to the powers 1 and up of the mass fraction. */
export const SPS4_B: readonly (readonly number[])[] = [
  [385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.289],
  [-46.272, -7.172, 1.1597, 5.1126, 17.5254],
  [59.7712, 7.2491, 12.363, -35.4791],
  [-47.2207, -21.6977, 27.6301],
  [18.3184, 12.3081],
];

/** Numerator of water's density, kg/m3: powers 0 to 5 of the temperature in degrees C. */
export const WATER_NUMERATOR = [
  999.83952, 16.952577, -7.9905127e-3, -46.241757e-6, 105.84601e-9, -281.03006e-12,
] as const;

/** The denominator is 1 + this * t, per degree C. */
export const WATER_DENOMINATOR = 16.887236e-3;

/** Saturation of sucrose in water, mass per cent: powers 0 to 4 of the temperature in degrees C (same manual). */
export const SUCROSE_SATURATION = [64.447, 0.08222, 1.6169e-3, -1.558e-6, -4.63e-8] as const;
