import type { DairyKind } from "../acid/dairy-kind-table.ts";
import { DAIRIES } from "../acid/dairy-table.ts";
import { type Liquid, NOTHING, volumeOf } from "../liquid/liquid.ts";
import { mix, portion } from "../liquid/mixing.ts";

/** A wash about to happen. Volumes in ml. */
export interface Wash {
  readonly punch: Liquid;
  readonly dairy: DairyKind;
  readonly milk: number;
}

/**
 * The clear part of milk once fat and casein have gone into the curd: water, milk sugar, whey.
 *
 * @param dairy - which milk
 * @param ml - how much
 * @returns the masses that stay in the drink
 * @source composition of the milk as in `dairy-table.ts`
 * @limits all whey protein and minerals stay; some of both goes into the curd
 * @example
 * wheyOf("whole", 500).water // => 453.2
 */
export function wheyOf(dairy: DairyKind, ml: number): Liquid {
  const { water, lactose, otherSolids } = DAIRIES[dairy];
  const litres = ml / 1000;
  return { ...NOTHING, water: water * litres, solids: (lactose + otherSolids) * litres };
}

/**
 * The clear liquid between the curd: punch and whey mixed by mass.
 *
 * @source mass balance; composition of the milk as in `dairy-table.ts`
 * @limits acid taken up by the curd's minerals and colour or tannin bound by casein are left out
 */
export const serumOf = (wash: Wash): Liquid => mix([wash.punch, wheyOf(wash.dairy, wash.milk)]);

/**
 * What comes through the filter.
 *
 * @param wash - punch and milk
 * @param retention - litres the curd keeps per litre of milk
 * @param filtersKeep - ml that all wetted filters keep together
 * @returns ml of clear liquid; 0 where curd and filters keep everything
 * @source volume balance V_out = V_serum - k V_milk - 20 ml per filter, k from common practice
 * @limits curd as drained, not pressed; k varies from 0.25 to 0.45 between houses; within 0.6 % of the
 *   reference notes' rule of thumb (4 L on 1 L of milk: 4.57 L), measured from 15 to 30 % ABV
 * @example
 * throughFilter({ punch: waterOf(4000), dairy: "whole", milk: 1000 }, 0.35, 20) // => 4576.27 ± 0.01
 */
export function throughFilter(wash: Wash, retention: number, filtersKeep: number): number {
  return Math.max(0, volumeOf(serumOf(wash)) - retention * wash.milk - filtersKeep);
}

/**
 * The clear liquid, for a volume that came through.
 *
 * @param ml - 0 or more
 * @throws RangeError on a negative volume
 * @example
 * volumeOf(clearOf({ punch: waterOf(4000), dairy: "whole", milk: 1000 }, 4500)) // => 4500 ± 0.001
 */
export const clearOf = (wash: Wash, ml: number): Liquid => portion(serumOf(wash), ml);
