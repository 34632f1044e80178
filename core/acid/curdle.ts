import { clearanceOf, isHotAndStrong, type Meeting, onsetOf } from "./clearance.ts";
import { type CurdleFixes, curdleFixes, expectPourable, type Pourable } from "./curdle-fix.ts";
import { dairyOf } from "./milk.ts";
import { ALCOHOL_DATA_END, type Mixing, mixPh, mixStrength, type PhBand } from "./mix-ph.ts";

/** A room's temperature, where none is given, degrees C. */
const ROOM = 20;
/** Below this milk curdles slowly and fine. */
const COLD = 10;
/** Where alcohol alone was seen to clot milk, v/v of the mix. */
const CLOTS_ALONE = 0.33;

/** What a person should know beside the verdict; the page has the sentences. */
export type CurdleNote =
  | "no-dairy"
  | "no-casein"
  | "no-data"
  | "hot-and-strong"
  | "cold-and-slow"
  | "heated-milk"
  | "alcohol-effect-assumed"
  | "beyond-alcohol-data"
  | "alcohol-may-clot-alone";

/** What is to meet what, and what could be changed. */
export interface CurdleQuestion extends Mixing {
  /** Of the mix, degrees C; 20 if left out. */
  readonly temperature?: number;
  /** Milk scalded, UHT or otherwise heated to 70 degrees C or more before; false if left out. */
  readonly heated?: boolean;
  /** The juice there could be more of, per ml. */
  readonly juice?: Pourable;
  /** The spirit there could be more of, per ml. */
  readonly base?: Pourable;
}

/** Whether a punch will curdle its dairy. */
export interface Curdling extends PhBand {
  /** "clearly" when the whole pH band lies at or below the onset, "no" when all of it lies above. */
  readonly verdict: "clearly" | "borderline" | "no";
  /** pH at which this milk begins to curdle here; null where nothing can. */
  readonly onset: number | null;
  /** Onset less the likeliest pH; null where nothing can curdle. */
  readonly margin: number | null;
  /** Of the mix, v/v. */
  readonly strength: number;
  readonly notes: readonly CurdleNote[];
  /** Empty when it clearly curdles, or never can. */
  readonly fixes: CurdleFixes;
}

function notesOf(meeting: Meeting): readonly CurdleNote[] {
  const { hasCasein, known } = dairyOf(meeting.dairy);
  const strength = mixStrength(meeting);
  const held: readonly (readonly [CurdleNote, boolean])[] = [
    ["no-dairy", meeting.dairyVolume === 0],
    ["no-casein", !hasCasein],
    ["no-data", !known],
    ["hot-and-strong", isHotAndStrong(meeting)],
    ["cold-and-slow", meeting.temperature < COLD],
    ["heated-milk", meeting.heated],
    ["alcohol-effect-assumed", hasCasein && strength > 0],
    ["beyond-alcohol-data", strength > ALCOHOL_DATA_END],
    ["alcohol-may-clot-alone", hasCasein && strength >= CLOTS_ALONE],
  ];
  return held.filter(([, holds]) => holds).map(([note]) => note);
}

function verdictOf(meeting: Meeting, onset: number, low: number): Curdling["verdict"] {
  if (clearanceOf(meeting, onset) >= 0) return "clearly";
  return low <= onset ? "borderline" : "no";
}

/**
 * Whether a punch will curdle its dairy, and what would change that.
 *
 * @param question - the whole punch, which dairy and how many ml; temperature of the mix in degrees C
 * (20 if left out); the juice and the spirit there could be more of, per ml
 * @returns verdict, pH band, onset, notes, and the smallest change in each direction that makes it
 * curdle clearly
 * @throws RangeError when an amount is negative or not a number, a strength is outside 0 to 1, the
 * temperature is outside -20 to 100, or punch and dairy are both empty
 * @source pH as `mixPh`, onset as `onsetPh`; hot and strong: above 30 degrees C and 35 % vol micelles
 * dissolve (abstract), so that "clearly" is withheld; alcohol alone clots milk from 33 to 45 % vol of
 * the mix (ethanol stability of bulk milk, abstract)
 * @limits no measured wash could be opened to check a verdict: the band is wide on purpose. Says
 * nothing of safety: a washed drink still holds milk and still spoils
 * @example
 * willCurdle({ punch: { volume: 800, acids: { citric: 7.7 }, cation: 0.0054, strength: 0.25 }, dairy: "whole", dairyVolume: 200 }).margin // => 2.01 ± 0.01
 */
export function willCurdle(question: CurdleQuestion): Curdling {
  const { temperature = ROOM, heated = false, juice, base } = question;
  const meeting: Meeting = { ...question, temperature, heated };
  if (juice !== undefined) expectPourable(juice, "the juice");
  if (base !== undefined) expectPourable(base, "the base");
  const band = mixPh(meeting);
  const onset = onsetOf(meeting);
  const known = { ...band, strength: mixStrength(meeting), notes: notesOf(meeting) };
  if (onset === null || meeting.dairyVolume === 0) {
    return { ...known, verdict: "no", onset: null, margin: null, fixes: {} };
  }
  const verdict = verdictOf(meeting, onset, band.low);
  const fixes = verdict === "clearly" ? {} : curdleFixes(meeting, juice, base);
  return { ...known, verdict, onset, margin: onset - band.pH, fixes };
}
