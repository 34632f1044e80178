import { chargeAt } from "./charge-balance.ts";
import { chargesOfMix, doubtOf, type Mixing, mixStrength } from "./mix-ph.ts";
import { onsetPh } from "./onset.ts";

/** Above both of these, alcohol and heat together dissolve casein instead of clumping it. */
const HOT = 30;
const STRONG = 0.35;

/** A punch, its dairy, and how they meet. */
export interface Meeting extends Mixing {
  /** Of the mix, degrees C. */
  readonly temperature: number;
  /** Milk scalded, UHT or otherwise heated to 70 degrees C or more before. */
  readonly heated: boolean;
}

/** pH at which the milk of a meeting begins to curdle; null where nothing can. */
export const onsetOf = (meeting: Meeting): number | null =>
  onsetPh({
    dairy: meeting.dairy,
    temperature: meeting.temperature,
    strength: mixStrength(meeting),
    heated: meeting.heated,
  });

/**
 * Whether alcohol and heat together work against the curd: above 30 degrees C and 35 % vol.
 *
 * @source abstract on milk and ethanol mixtures: 35 % vol above about 30 degrees C dissolves micelles
 */
export const isHotAndStrong = (meeting: Meeting): boolean =>
  meeting.temperature > HOT && mixStrength(meeting) > STRONG;

/**
 * By how much a mix is beyond doubt: 0 or more when even the high end of its pH band lies at or
 * below the onset and it is not hot and strong. Its sign and its zero are what the fixes are solved
 * on, without having to solve for a pH at each trial.
 *
 * @param onset - pH at which this milk begins to curdle
 * @returns no unit of use to a person: mol/L of charge to spare, or v/v below the limit if that is less
 */
export function clearanceOf(meeting: Meeting, onset: number): number {
  const spareAcid = -chargeAt(chargesOfMix(meeting), onset - doubtOf(meeting));
  if (meeting.temperature <= HOT) return spareAcid;
  return Math.min(spareAcid, STRONG - mixStrength(meeting));
}
