/**
 * Cautions an ingredient carries into every drink it goes into, the most pressing first.
 * From the project's reference notes on food safety and law, read 2026-11-25: holding at or below
 * 5 °C (model food code 3-501.14), flash points of spirit (ethanol-water tables), garlic or herb in
 * oil (extension advice, 3 days), grapefruit with medicines (CYP3A4), quinine at most 83 ppm (21 CFR
 * 172.575), coumarin (21 CFR 189.130; EFSA 2008), unpasteurised juice (21 CFR 101.17(g)). Raw egg:
 * common practice, no source.
 */
export const CAUTIONS = [
  "keep-cold",
  "raw-egg",
  "oil-infusion",
  "overproof",
  "grapefruit",
  "quinine",
  "coumarin",
  "fresh-juice",
] as const;

/** v/v: from here on a spirit counts as overproof, for its vapour burns at room temperature. */
export const OVERPROOF_FROM = 0.5;
