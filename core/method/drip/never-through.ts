import { HOUR } from "../../quantity/time-units-table.ts";
import type { Spread } from "./bell-mixture.ts";

/** Later than this no kitchen waits for a drip, ms. Judgement. */
const TOO_LONG = 48 * HOUR;
/** A late end so many times the middle is no date any more. Judgement. */
const TOO_WIDE = 5;

/**
 * Whether a drip may never be through: its late end is so far off, or so much later than its
 * middle, that a date would promise what nobody knows.
 *
 * @param throughAt - when the target has come through, ms since the drip began
 * @source judgement: more than 48 h, or more than five times the middle
 * @example
 * Number(mayNeverBeThrough({ p10: 3e6, p50: 6e6, p90: 31e6 })) // => 1
 */
export const mayNeverBeThrough = ({ p50, p90 }: Spread): boolean =>
  p90 > TOO_LONG || p90 > TOO_WIDE * p50;
