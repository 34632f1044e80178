import { FAHRENHEIT_REGIONS, OUNCE_REGIONS } from "./region-units-table.ts";

/** What volumes and temperatures are shown and typed in. */
export interface UnitsInUse {
  readonly volumes: "ml" | "oz";
  readonly degrees: "C" | "F";
}

/** A language tag with its region, two letters or three digits: "en-US", "zh-Hant-TW", "es-419". */
const REGION = /^[a-z]{2,3}(?:-[a-z]{3}){0,3}(?:-[a-z]{4})?-([a-z]{2}|\d{3})(?:-|$)/iu;

/**
 * The units of the country that a phone is set to: the first of its languages that names a country
 * or a part of the world decides. Where none does, ml and degrees C.
 *
 * @param tags - languages of the phone, the preferred one first (BCP 47)
 * @returns what is used there
 * @source see the table
 * @example
 * Number(unitsWhere(["en-US", "en"]).volumes === "oz") // => 1
 */
export function unitsWhere(tags: readonly string[]): UnitsInUse {
  const region = tags.flatMap((tag) => REGION.exec(tag)?.[1]?.toUpperCase() ?? [])[0] ?? "";
  return {
    volumes: OUNCE_REGIONS.has(region) ? "oz" : "ml",
    degrees: FAHRENHEIT_REGIONS.has(region) ? "F" : "C",
  };
}
