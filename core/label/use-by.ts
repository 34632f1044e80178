import { addDays } from "date-fns/addDays";
import { endOfDay } from "date-fns/endOfDay";

/** The longest that chilled ready-to-eat food is kept under the model food code, days. */
export const LONGEST_CHILLED_DAYS = 7;

/**
 * The last moment a batch may be used: the end of a local day, the day of preparation being day 1.
 *
 * @param madeAt - when preparation began, epoch ms: the earliest ingredient rules, not the bottling
 * @param keepDays - the house's rule for this spec, whole days from 1
 * @returns epoch ms, in the phone's time zone; days that a clock change makes longer or shorter
 *   still count as one
 * @throws RangeError when `keepDays` is not a whole number from 1
 * @source counting as in the model food code 3-501.17 (7 days at or below 5 °C, day of preparation
 *   is day 1), read as Minnesota Rules 4626.0400; the EU leaves the days to the house's own risk
 *   assessment (Regulation (EC) No 852/2004). Follow your local code.
 * @limits knows nothing of an ingredient's own use-by date, which comes first where it is earlier
 * @example
 * useByOf(1764064800000, 7) - useByOf(1764064800000, 1) // => 518400000
 */
export function useByOf(madeAt: number, keepDays: number): number {
  if (!Number.isInteger(keepDays) || keepDays < 1) {
    throw new RangeError(`days kept must be a whole number from 1, got ${keepDays}`);
  }
  return endOfDay(addDays(madeAt, keepDays - 1)).getTime();
}
