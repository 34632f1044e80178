/**
 * Which countries measure otherwise than in ml and degrees C: Unicode CLDR, supplemental data,
 * `measurementSystem` of type US and the same of category temperature; read on 2026-11-26 as other
 * public programs quote it, not in the original. Britain has a system of its own there, for roads
 * and beer: its bars pour spirit in ml (common practice, no source), so it is in neither list.
 */
export const OUNCE_REGIONS: ReadonlySet<string> = new Set(["US", "LR"]);

/** Where warmth is told in degrees F. */
export const FAHRENHEIT_REGIONS: ReadonlySet<string> = new Set([
  "US",
  "BS",
  "BZ",
  "KY",
  "PR",
  "PW",
]);
