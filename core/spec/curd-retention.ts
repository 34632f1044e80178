import type { DairyKind } from "../acid/dairy-kind-table.ts";
import { DAIRIES } from "../acid/dairy-table.ts";
import type { Retention } from "./house-rules.ts";

/**
 * Where nothing or hardly anything curdles, what is kept beside the filters.
 * @source judgement: fine solids settle on the filter; no measurement was found
 */
const WITHOUT_CURD = 0.3;

/**
 * How much liquid a dairy's curd keeps, against whole milk's: as much as there is casein to curdle.
 *
 * @param dairy - which milk
 * @returns 1 for whole milk; soy counts as whole milk, whose protein content it has
 * @source judgement: in proportion to casein (`dairy-table.ts`); only whole milk has figures of
 *   practice, and none of these was measured
 */
export function curdShare(dairy: DairyKind): number {
  const { casein, onset } = DAIRIES[dairy];
  if (casein > 0) return casein / DAIRIES.whole.casein;
  return onset === null ? WITHOUT_CURD : 1;
}

/**
 * What the curd of a dairy keeps, from what a house knows of whole milk.
 *
 * @param retention - litres per litre of whole milk
 * @param dairy - which milk is used
 * @source as `curdShare`
 */
export function retentionOf(retention: Retention, dairy: DairyKind): Retention {
  const share = curdShare(dairy);
  const { mean, low, high } = retention;
  return { ...retention, mean: mean * share, low: low * share, high: high * share };
}
