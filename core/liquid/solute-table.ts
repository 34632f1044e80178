import type { AcidName } from "../quantity/acid-name.ts";

/**
 * What a gram of dissolved acid or other solid adds to the volume, ml at 20 degrees C.
 *
 * Source: citric, lactic and acetic acid and milk sugar from the density rows of the CRC Handbook of
 * Chemistry and Physics, 102nd edition, "Concentrative properties of aqueous solutions", as the mean of
 * (1/rho - (1 - w)/rho_water)/w. The other acids from memory of handbook densities: a wrong 0.05 moves
 * a litre with 10 g of acid by 0.5 ml. Read 2026-11. Figures, not protected.
 */
export const ACID_APPARENT_VOLUME: Readonly<Record<AcidName, number>> = {
  citric: 0.597,
  malic: 0.61,
  tartaric: 0.55,
  lactic: 0.79,
  acetic: 0.864,
  phosphoric: 0.48,
};

/** The same for other solids, ml per g: that of milk sugar, which is most of what whey holds. */
export const SOLIDS_APPARENT_VOLUME = 0.606;
