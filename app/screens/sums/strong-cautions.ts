import { flashPoint } from "../../../core/liquid/flash-point.ts";
import { OVERPROOF_FROM } from "../../../core/spec/caution-table.ts";
import { degreesDown } from "../../words/degrees.ts";
import { abv } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";

/** Weaker than this it must be warmer than a hot kitchen to burn. */
const SPIRIT_FROM = 0.3;

/** What must be said where a spirit is handled by itself. */
export function spiritCautions(strength: number): readonly string[] {
  const degrees = flashPoint(strength);
  if (degrees === undefined || strength < SPIRIT_FROM) return [];
  const { flash, heating } = sayLater.sums;
  const always = [flash(abv(strength), degreesDown(degrees)), heating];
  return strength < OVERPROOF_FROM ? always : [sayLater.cautions.full("overproof"), ...always];
}

/** The same where a drink is meant: of an overproof one only. */
export const strongCautions = (strength: number): readonly string[] =>
  strength < OVERPROOF_FROM ? [] : spiritCautions(strength);
