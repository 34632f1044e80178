import { type Ounce, ounceInMl } from "../../core/quantity/ounce.ts";
import { type VolumeChoice, volumeUnit } from "./house-units.ts";

/** A number as it is shown: how many decimals, and its unit. */
export interface Shown {
  readonly value: number;
  readonly places: number;
  readonly unit: string;
}

/** How many decimals a measured or rounded amount has, up to one; nothing for any other. */
function exactPlaces(amount: number): number | undefined {
  const tenths = Math.round(amount * 10);
  if (Math.abs(amount * 10 - tenths) > 1e-6) return undefined;
  return tenths % 10 === 0 ? 0 : 1;
}

/** ml to what a jug shows: a tenth below 10, whole below 1000, nearest 5 above; measured ones as is. */
function mlShown(ml: number): Shown {
  const unit = "ml";
  const exact = exactPlaces(ml);
  if (exact !== undefined) return { value: ml, places: exact, unit };
  if (ml < 9.95) return { value: ml, places: 1, unit };
  return { value: ml < 1000 ? ml : Math.round(ml / 5) * 5, places: 0, unit };
}

/** A volume as it is shown, in the house's unit. */
export function volumeShown(ml: number, style: { volumes: VolumeChoice; ounce: Ounce }): Shown {
  if (volumeUnit(style.volumes) === "ml") return mlShown(ml);
  const oz = ml / ounceInMl(style.ounce);
  return { value: oz, places: oz < 10 ? 2 : 1, unit: "oz" };
}

/** A mass: a tenth of a gram below 100 g, whole grams above; a measured one as it is. */
export function massShown(g: number): Shown {
  return { value: g, places: exactPlaces(g) ?? (g < 99.95 ? 1 : 0), unit: "g" };
}
