import { ACID_NAMES, type AcidMasses, type AcidName } from "../quantity/acid-name.ts";
import { requireWithin } from "../quantity/require-within.ts";
import { rootBetween } from "../quantity/solve.ts";
import { clearanceOf, type Meeting, onsetOf } from "./clearance.ts";
import type { Punch } from "./mix-ph.ts";

/** The least milk that still makes a wash, per volume of punch: a second wash uses 5 %. Practice. */
const LEAST_DAIRY = 0.05;
/** A fix may at most double the batch, or add this much citric acid, g per ml. Judgement. */
const MOST_ADDED = 1;
const MOST_ACID = 0.05;
/** Trials between nothing and the most, each so many times the one before. */
const TRIALS = 14;
const STEP = 1.7;
/** Share of an amount to which it is solved, and by which it is rounded up. */
const EXACT = 1e-4;

/** What is poured in more: per ml, acids in g and cation in mol; strength v/v. */
export interface Pourable {
  readonly acids: AcidMasses;
  readonly cation: number;
  readonly strength: number;
}

/** The smallest change that curdles beyond doubt, or that there is none within reason. */
export type Fix = number | "cannot-reach";

/** Changes that would each, alone, make a mix curdle beyond doubt. */
export interface CurdleFixes {
  /** Left out where no juice was named. */
  readonly moreJuiceMl?: Fix;
  readonly lessDairyMl?: Fix;
  /** Left out where no base was named. */
  readonly moreBaseMl?: Fix;
  /** Citric acid, as powder. */
  readonly moreAcidG?: Fix;
}

/**
 * Stops at a juice or spirit that cannot be.
 *
 * @param what - its name, for the message
 * @throws RangeError when it holds more than 2 g of an acid or 1 mol of cation per ml, or its strength
 * is outside 0 to 1
 */
export function expectPourable({ acids, cation, strength }: Pourable, what: string): void {
  for (const name of ACID_NAMES) {
    requireWithin(acids[name] ?? 0, 0, 2, `the ${name} acid of ${what} in g per ml`);
  }
  requireWithin(cation, 0, 1, `the net strong cation of ${what} in mol per ml`);
  requireWithin(strength, 0, 1, `the strength of ${what} (0 to 1)`);
}

function withMore(punch: Punch, more: Pourable, ml: number): Punch {
  const acids: Partial<Record<AcidName, number>> = {};
  for (const name of ACID_NAMES) {
    acids[name] = (punch.acids[name] ?? 0) + ml * (more.acids[name] ?? 0);
  }
  const volume = punch.volume + ml;
  return {
    volume,
    acids,
    cation: punch.cation + ml * more.cation,
    strength: (punch.strength * punch.volume + more.strength * ml) / volume,
  };
}

const withCitric = (punch: Punch, g: number): Punch => ({
  ...punch,
  acids: { ...punch.acids, citric: (punch.acids.citric ?? 0) + g },
});

/**
 * The smallest amount that clears. Trials go from small to large, so that a direction which helps
 * only for a while (spirit past a quarter of the mix) is not missed.
 */
function smallest(clearance: (amount: number) => number, most: number): Fix {
  let short = 0;
  for (let trial = TRIALS; trial >= 0; trial -= 1) {
    const amount = most / STEP ** trial;
    if (amount > 0 && clearance(amount) >= 0) {
      const root = rootBetween(clearance, short, amount, amount * EXACT);
      return Math.min(amount, root * (1 + EXACT) + amount * EXACT);
    }
    short = amount;
  }
  return "cannot-reach";
}

/**
 * What would make a mix that may not curdle do so beyond doubt, one change at a time.
 *
 * @param meeting - punch and dairy as planned, not yet beyond doubt
 * @param juice - the juice there could be more of
 * @param base - the spirit there could be more of
 * @returns ml or g, each rounded up by at most 0.03 %; "cannot-reach" where even doubling the batch,
 * leaving only 5 % of dairy to punch, or 50 g of citric acid per litre does not do it
 * @source the limits are judgement; 5 % is the practice of a second wash
 */
export function curdleFixes(meeting: Meeting, juice?: Pourable, base?: Pourable): CurdleFixes {
  const { punch, dairyVolume } = meeting;
  const total = punch.volume + dairyVolume;
  const clears = (changed: Partial<Meeting>): number => {
    const after = { ...meeting, ...changed };
    return clearanceOf(after, onsetOf(after) ?? 0);
  };
  const more = (added: Pourable): Fix =>
    smallest((ml) => clears({ punch: withMore(punch, added, ml) }), total * MOST_ADDED);
  return {
    ...(juice === undefined ? {} : { moreJuiceMl: more(juice) }),
    lessDairyMl: smallest(
      (ml) => clears({ dairyVolume: dairyVolume - ml }),
      dairyVolume - punch.volume * LEAST_DAIRY,
    ),
    ...(base === undefined ? {} : { moreBaseMl: more(base) }),
    moreAcidG: smallest((g) => clears({ punch: withCitric(punch, g) }), total * MOST_ACID),
  };
}
