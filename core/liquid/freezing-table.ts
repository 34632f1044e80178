import type { AcidName } from "../quantity/acid-name.ts";

/**
 * Freezing of water with ethanol, sugar and acids in it.
 *
 * Source: CRC Handbook of Chemistry and Physics, 102nd edition, "Concentrative properties of aqueous
 * solutions", read as the data file of the public repository amosonabike/CRC-Solution-Properties-, 2026-11. Figures, not protected.
 */

/** Mass fraction of ethanol in ethanol and water, and how far below 0 degrees C ice begins to form, K. */
export const ETHANOL_FREEZING: readonly (readonly [number, number])[] = [
  [0.005, 0.2],
  [0.02, 0.81],
  [0.03, 1.23],
  [0.04, 1.65],
  [0.06, 2.54],
  [0.07, 2.99],
  [0.08, 3.47],
  [0.1, 4.47],
  [0.11, 5],
  [0.12, 5.56],
  [0.14, 6.73],
  [0.15, 7.36],
  [0.16, 8.01],
  [0.18, 9.4],
  [0.19, 10.14],
  [0.2, 10.92],
  [0.24, 14.47],
  [0.26, 16.41],
  [0.28, 18.43],
  [0.32, 22.44],
  [0.34, 24.27],
  [0.36, 25.98],
  [0.4, 29.26],
  [0.42, 30.98],
  [0.44, 32.68],
  [0.48, 36.04],
  [0.5, 37.67],
  [0.52, 39.2],
  [0.56, 42.06],
  [0.58, 43.49],
  [0.6, 44.93],
  [0.64, 47.52],
  [0.66, 48.64],
  [0.68, 49.52],
];

/** Sucrose, K: powers 1 and 2 of mol per kg water; our least squares on the CRC rows to 42 per cent. */
export const SUCROSE_FREEZING = [1.8343, 0.22992] as const;

/** Water's own constant, K kg per mol of particles (CRC Handbook). */
export const WATER_FREEZING = 1.86;

/**
 * What an acid does, K kg per mol: citric, lactic and acetic from the CRC rows to 20 per cent (the
 * excess over 1.86 is their dissociation, the lack is lactic acid's binding to itself); the others are
 * taken as citric (judgement: 5 g of acid in a litre moves the freezing point by 0.05 K).
 */
export const ACID_FREEZING: Readonly<Record<AcidName, number>> = {
  citric: 1.96,
  malic: 1.96,
  tartaric: 1.96,
  lactic: 1.63,
  acetic: 1.77,
  phosphoric: 1.96,
};
