/**
 * Coefficients of the density of ethanol-water mixtures.
 *
 * Source: OIML R 22 (International alcoholometric tables, 1975), the formula that Council
 * Directive 76/766/EEC repeats. The annex of the directive was opened (formula, range and the first
 * coefficients); the full set was read in three public copies and compared digit by digit; OIML R 22
 * itself was not opened. Read 2026-11. A legal text: facts, not protected.
 */

/** A1 to A12, kg/m3: the powers 0 to 11 of the mass fraction at 20 degrees C. */
export const OIML_A = [
  998.20123, -192.9769495, 389.1238958, -1668.103923, 13522.15441, -88292.78388, 306287.4042,
  -613838.1234, 747017.2998, -547846.1354, 223446.0334, -39032.85426,
] as const;

/** B1 to B6, kg/m3 per degree to the power k: water's own expansion. */
export const OIML_B = [
  -0.20618513, -0.0052682542, 3.6130013e-5, -3.8957702e-7, 7.169354e-9, -9.9739231e-11,
] as const;

/** C(i, k), kg/m3 per degree to the power i: row i holds the powers 1 and up of the mass fraction. */
export const OIML_C: readonly (readonly number[])[] = [
  [
    0.1693443461530087, -10.46914743455169, 71.96353469546523, -704.7478054272792,
    3924.090430035045, -12101.64659068747, 22486.46550400788, -26055.62982188164, 18523.73922069467,
    -7420.201433430137, 1285.617841998974,
  ],
  [
    -0.0119301300505701, 0.2517399633803461, -2.170575700536993, 13.53034988843029,
    -50.29988758547014, 109.635566657757, -142.2753946421155, 108.043594285623, -44.14153236817392,
    7.442971530188783,
  ],
  [
    -0.0006802995733503803, 0.01876837790289664, -0.2002561813734156, 1.02299296671922,
    -2.895696483903638, 4.810060584300675, -4.672147440794683, 2.458043105903461,
    -0.5411227621436812,
  ],
  [4.075376675622027e-6, -8.76305857347111e-6, 6.515031360099368e-6, -1.51578483698721e-6],
  [-2.788074354782409e-8, 1.345612883493354e-8],
];
