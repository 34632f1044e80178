import { BAR_OUNCE, US_FLUID_OUNCE } from "./measures-table.ts";

/** Which ounce the house pours. */
export type Ounce = "bar" | "exact";

/**
 * The house's ounce.
 *
 * @param ounce - "bar" for the 30 ml jigger, "exact" for the US fluid ounce
 * @returns ml
 * @source NIST Handbook 44, appendix C (exact); 30 ml: common practice, no source
 * @example
 * ounceInMl("exact") // => 29.5735295625
 */
export const ounceInMl = (ounce: Ounce): number => (ounce === "bar" ? BAR_OUNCE : US_FLUID_OUNCE);
