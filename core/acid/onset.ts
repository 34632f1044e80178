import { requireWithin } from "../quantity/require-within.ts";
import type { DairyKind } from "./dairy-kind-table.ts";
import { dairyOf } from "./milk.ts";

/** Where the published onset was measured, and how it moves: degrees C, pH per degree. */
const ONSET_AT = 25;
const PER_DEGREE = 0.032;
/** The slope is known between these; outside it the onset is held. */
const COLDEST = 4;
const HOTTEST = 47;
const HEATED = 0.4;
/** ASSUMED: pH per unit of strength (0.02 per % vol), and the strength at which it stops. */
const PER_STRENGTH = 2;
const MOST_STRENGTH = 0.25;
/** No milk is taken to curdle above this, however hot and strong: judgement. */
const HIGHEST = 6.2;

/** How a mix stands when it is to curdle. */
export interface CurdConditions {
  readonly dairy: DairyKind;
  /** Of the mix, degrees C. */
  readonly temperature: number;
  /** Of the mix, v/v, 0 to 1. */
  readonly strength: number;
  /** Scalded, UHT or otherwise heated to 70 degrees C or more before. */
  readonly heated: boolean;
}

/**
 * pH at which a milk begins to curdle.
 *
 * @param conditions - which milk, temperature in degrees C and strength of the mix, heated before or not
 * @returns pH; null for a milk that has nothing to curdle
 * @throws RangeError when the temperature is outside -20 to 100 or the strength outside 0 to 1
 * @source Bringe & Kinsella, Food Hydrocolloids 7 (1993) 113, abstract: 5.1 at 25, 5.8 at 47 degrees C,
 * 0.4 higher in milk heated to 70 to 95 degrees C. US patent 3,953,610 (1976): about 4.5 at 4 degrees C.
 * That alcohol raises it in nearly a straight line up to 10 % vol: Huppertz, Dairy (2022), abstract,
 * which prints no slope; the 0.02 per % vol, held from 25 % vol, is an assumption
 * @limits measured on diluted skim milk; held below 4 and above 47 degrees C; soy has no data for any
 * of this and is held at its isoelectric point
 * @example
 * onsetPh({ dairy: "whole", temperature: 47, strength: 0, heated: false }) // => 5.8 ± 0.01
 */
export function onsetPh({ dairy, temperature, strength, heated }: CurdConditions): number | null {
  requireWithin(temperature, -20, 100, "a temperature of the mix in degrees C");
  requireWithin(strength, 0, 1, "a strength of the mix (0 to 1)");
  const { onset, hasCasein } = dairyOf(dairy);
  if (onset === null || !hasCasein) return onset;
  const warmth = PER_DEGREE * (Math.min(HOTTEST, Math.max(COLDEST, temperature)) - ONSET_AT);
  const alcohol = PER_STRENGTH * Math.min(strength, MOST_STRENGTH);
  return Math.min(HIGHEST, onset + warmth + alcohol + (heated ? HEATED : 0));
}
