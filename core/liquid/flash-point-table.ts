/**
 * Temperature from which the vapour of ethanol with water can be lit: strength (v/v), degrees C.
 *
 * Source: engineeringtoolbox.com, ethanol and water, table d_989, opened in the project's reference
 * notes (safety_law.json, row `flash`, read 2026-11-25). The page says per cent by weight, other
 * copies print the same figures by volume: by volume is the safer reading. The last row, pure
 * ethanol, is from memory of handbook tables (closed cup). Figures, not protected.
 */
export const FLASH_POINTS: readonly (readonly [strength: number, degrees: number])[] = [
  [0.05, 62],
  [0.1, 49],
  [0.2, 36],
  [0.3, 29],
  [0.4, 26],
  [0.5, 24],
  [0.6, 22],
  [0.7, 21],
  [0.8, 20],
  [0.9, 17],
  [1, 13],
];
