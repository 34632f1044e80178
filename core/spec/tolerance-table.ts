import { LABEL_TOLERANCE } from "../liquid/interval.ts";
import type { Ingredient } from "./ingredient.ts";

/**
 * How far the strength on a label may be off, v/v either way, by shelf of the cupboard.
 * Regulation (EU) No 1169/2011, Annex XII, read in a copy of its German text on 2026-11-25: 0.3 % vol
 * for drinks not named apart (spirits, liqueurs), 1.5 % where fruit or parts of plants macerate in
 * them (not assumed here). Wine of grapes: 0.5 % vol, from memory of the wine rules (0.8 for liqueur
 * wines, excerpt of Regulation (EEC) No 1069/87). Bitters as spirits.
 */
export const LABEL_TOLERANCES: Readonly<Partial<Record<Ingredient["kind"], number>>> = {
  spirit: LABEL_TOLERANCE,
  liqueur: LABEL_TOLERANCE,
  bitters: LABEL_TOLERANCE,
  wine: 0.005,
};

/** A strength that came from nobody's label: worked out or guessed. Judgement. */
export const UNLABELLED_TOLERANCE = 0.005;

/**
 * Limits of a serving measure with a line: 5 % below 200 ml, 5 ml and 2.5 % from there on (rules for
 * serving measures of Directive 2014/32/EU, annex MI-008, as told on a travel forum, read 2026-11-25;
 * the annex itself was not opened). The smaller of the two is exactly that.
 */
export const MEASURE_SHARE = 0.05;
export const LARGE_MEASURE = { ml: 5, share: 0.025 };

/** Water taken up from ice, ml per ml poured either way, where the house measured none: see `ice.ts`. */
export const ICE_WATER_WITHIN = 0.05;
