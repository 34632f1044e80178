import { requireWithin } from "../../quantity/require-within.ts";
import { HOUR } from "../../quantity/time-units-table.ts";

/**
 * How long a slow drip usually takes, before anything was read.
 *
 * @param ml - all that should come through
 * @param filters - that share it evenly, from 1
 * @returns ms
 * @throws RangeError when the volume is negative or there is no filter
 * @source about one hour for one litre through one large paper (a public answer page, low
 *   authority); time goes with the square of the volume per filter (Ruth's law at a constant head,
 *   from memory)
 * @limits within a factor of three: readings replace it
 * @example
 * usualDrip(5000, 2) // => 22500000
 */
export function usualDrip(ml: number, filters: number): number {
  requireWithin(ml, 0, Number.MAX_VALUE, "the volume in ml");
  requireWithin(filters, 1, Number.MAX_VALUE, "the number of filters");
  return HOUR * (ml / 1000 / filters) ** 2;
}
