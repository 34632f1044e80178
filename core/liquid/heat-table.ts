/**
 * Heat in drinks and ice.
 *
 * Sources: heat capacity of ethanol and water, polynomial of Melinder (2010) as in the CoolProp data
 * file MEA.json, read 2026-11. Ice, water, melting: CRC Handbook, from memory. Sucrose:
 * from memory. Heat of mixing: see below. Figures, not protected.
 */

/** J/(g K): row i holds the powers of (mass fraction - 0.292361) for (t - 8.1578 degrees C) to the power i. */
export const MELINDER_HEAT_CAPACITY: readonly (readonly number[])[] = [
  [4.204, -2.102, -3.714, 17.43, -6.292, -82.9],
  [2.319e-3, 4.927e-2, -2.335e-2, -2.969e-1, 5.353e-1],
  [-3.042e-5, -3.072e-4, -1.96e-4, 1.901e-3],
  [6.86e-7, -5.69e-6, 7.461e-6],
];
export const MELINDER_CENTRE = { fraction: 0.292361, temperature: 8.1578 } as const;
/** The polynomial's last mass fraction; from there to pure ethanol it is a straight line. */
export const MELINDER_LAST = 0.6;

/** J/(g K) */
export const ETHANOL_HEAT_CAPACITY = 2.4;
export const WATER_HEAT_CAPACITY = 4.2;
export const ICE_HEAT_CAPACITY = 2.09;
/** Of dissolved sucrose; acids and other solids are taken as the same. */
export const SUGAR_HEAT_CAPACITY = 1.244;
/** J/g */
export const MELTING_HEAT = 333.55;

/**
 * Heat of mixing ethanol with water: mole fraction of ethanol, J per mol ethanol at 25 degrees C
 * (negative: it warms), J/(mol K) for other temperatures.
 *
 * Source: -10.16 kJ/mol at infinite dilution and about -780 J per mol mixture at 0.15, with the curve
 * between, from memory of calorimetric papers; a worked example of a textbook (opened:
 * -9800 J/mol at mole fraction 0.02) lies on it within 0.3 %. The last column is what Melinder's heat capacity at 10
 * degrees has above that of the unmixed parts (to 0.37; a guess beyond, where it hardly matters).
 */
export const MIXING_HEAT: readonly (readonly [number, number, number])[] = [
  [0, -10160, 180],
  [0.025, -9720, 170],
  [0.05, -9100, 153],
  [0.075, -8130, 133],
  [0.1, -7120, 114],
  [0.125, -6130, 97],
  [0.15, -5200, 83],
  [0.2, -3775, 62],
  [0.25, -2760, 49],
  [0.3, -2030, 41],
  [0.4, -1190, 24],
  [0.5, -790, 14],
  [0.6, -550, 9],
  [0.8, -225, 4],
  [1, 0, 0],
];
