import { usualDrip } from "../../method/drip/usual-drip.ts";
import { MINUTE } from "../../quantity/time-units-table.ts";
import { curdShare } from "../../spec/curd-retention.ts";
import { type HouseRules, RETENTION_PRIOR, type WashLearnt } from "../../spec/house-rules.ts";
import { washGroup, worldOf } from "../../spec/wash-group.ts";
import type { BatchRecord } from "../record.ts";
import { FEWEST_TO_LEARN, LATEST_TO_LEARN } from "./lesson-size-table.ts";
import { type Belief, type Lesson, type Shrunk, shrunk } from "./shrunk.ts";

/** What a bar learns of its washes. */
export const LESSONS = ["curd", "share", "clear", "drip", "passes"] as const;
/** One of them. */
export type LessonName = (typeof LESSONS)[number];

/** How a figure is read off a batch, and what is believed of it before any. */
interface Subject {
  readonly of: (batch: BatchRecord) => number | undefined;
  /** On the logarithm where `log` says so. */
  readonly belief: Belief;
  readonly log: boolean;
  /** The figure cannot be less. */
  readonly least: number;
}

const half = (low: number, high: number): Belief => ({
  mean: (low + high) / 2,
  half: (high - low) / 2,
});

function dripTimesOf({ work, yielded, wash }: BatchRecord): number | undefined {
  const took = work.drip?.took;
  if (took === undefined || yielded === undefined || wash === undefined) return undefined;
  const usual = usualDrip(yielded.ml, wash.filters);
  return took > 0 && usual > 0 ? took / usual : undefined;
}

/**
 * Before any batch of its own, a bar goes by these; 8 in 10 batches within.
 * @source curd: 0.25 to 0.45 l per l, common practice, no source; share: the same at one part of milk
 *   to four of punch, a third wider for other ratios, judgement; drip: a factor of three either way,
 *   as `usualDrip`; time to clear 1.5 to 11 minutes and 0 to 3 passes: judgement
 */
const SUBJECTS: Readonly<Record<LessonName, Subject>> = {
  curd: {
    of: ({ made, wash }) =>
      made.curdKept === undefined || wash === undefined
        ? undefined
        : made.curdKept / curdShare(wash.dairy),
    belief: half(RETENTION_PRIOR.low, RETENTION_PRIOR.high),
    log: false,
    least: 0,
  },
  share: { of: ({ yielded }) => yielded?.share, belief: half(0.887, 0.941), log: false, least: 0 },
  clear: {
    of: ({ cleared }) => cleared?.took,
    belief: half(Math.log(1.5 * MINUTE), Math.log(11 * MINUTE)),
    log: true,
    least: 0,
  },
  drip: { of: dripTimesOf, belief: half(Math.log(1 / 3), Math.log(3)), log: true, least: 0 },
  passes: {
    // A batch without a filter through which it could run cloudy teaches nothing of passes.
    of: ({ cleared }) => cleared?.passes,
    belief: half(0, 3),
    log: false,
    least: 0,
  },
};

/** The kind of wash of a batch, by the name that `washGroup` gives it; nothing for other batches. */
export function kindOf({ wash, procedureId, demo }: BatchRecord): string | undefined {
  return wash && washGroup({ procedureId, shape: wash.shape, dairy: wash.dairy, demo });
}

const world = ({ demo }: BatchRecord): string => worldOf({ demo });

/** Of each kind the latest batches that tell something of a subject. */
function lessonsOf(batches: readonly BatchRecord[], { of, log }: Subject): readonly Lesson[] {
  const counts = new Map<string, number>();
  return batches
    .filter(({ ending }) => ending !== undefined)
    .toSorted((a, b) => b.startedAt - a.startedAt)
    .flatMap((batch) => {
      const [group, figure] = [kindOf(batch), of(batch)];
      if (group === undefined || figure === undefined || (log && !(figure > 0))) return [];
      const count = (counts.get(group) ?? 0) + 1;
      counts.set(group, count);
      return count > LATEST_TO_LEARN ? [] : [{ group, value: log ? Math.log(figure) : figure }];
    });
}

/**
 * What a bar's batches teach of one figure of a kind of wash: curd and share in litres per litre,
 * times in ms, the drip as times the usual one.
 *
 * @param batches - of one world: the bar's own, or the invented ones
 * @param kind - as `kindOf` names it; one without batches goes by the house
 * @returns with no batch, what is believed before any
 * @source as `shrunk`; times on a logarithmic scale; the latest 20 batches of each kind: judgement
 */
export function lessonOf(batches: readonly BatchRecord[], name: LessonName, kind: string): Shrunk {
  const subject = SUBJECTS[name];
  const found = shrunk(lessonsOf(batches, subject), subject.belief, kind);
  const back = (value: number): number =>
    Math.max(subject.least, subject.log ? Math.exp(value) : value);
  return { ...found, mean: back(found.mean), low: back(found.low), high: back(found.high) };
}

/** How many batches a figure is from: of its very kind where there are enough, else of the house. */
export const toldBy = ({ batches, house }: Shrunk): number =>
  batches >= FEWEST_TO_LEARN ? batches : house;

function washLearnt(batches: readonly BatchRecord[], kind: string): WashLearnt {
  const curd = lessonOf(batches, "curd", kind);
  const drip = lessonOf(batches, "drip", kind);
  const { mean, low, high } = curd;
  return {
    ...(curd.house < FEWEST_TO_LEARN
      ? {}
      : { retention: { mean, low, high, from: "own-batches", batches: toldBy(curd) } as const }),
    ...(drip.house < FEWEST_TO_LEARN
      ? {}
      : { drip: { times: drip.mean, low: drip.low, high: drip.high, batches: toldBy(drip) } }),
  };
}

/**
 * What a house's own batches have taught, for planning: by kind of wash, and for any other wash of
 * the house. Invented batches teach invented ones alone.
 *
 * @param batches - every batch there is
 * @returns nothing of what fewer than three batches told of
 */
export function learntRules(batches: readonly BatchRecord[]): NonNullable<HouseRules["learnt"]> {
  const learnt = new Map<string, WashLearnt>();
  for (const own of ["own", "demo"]) {
    const mine = batches.filter((batch) => world(batch) === own && kindOf(batch) !== undefined);
    if (mine.length < FEWEST_TO_LEARN) continue;
    // The house's own name is no kind of wash: what it gives is for a kind without batches.
    const kinds = new Set([own, ...mine.flatMap((batch) => kindOf(batch) ?? [])]);
    for (const kind of kinds) learnt.set(kind, washLearnt(mine, kind));
  }
  return Object.fromEntries(learnt);
}
