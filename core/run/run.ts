import {
  type Outcome,
  type Procedure,
  type ReadingKey,
  type Stand,
  type Step,
  stepOf,
} from "../method/procedure.ts";
import type { Plan } from "../spec/plan.ts";
import type { FilterShape } from "../spec/spec.ts";
import type {
  Bottles,
  OtherWatch,
  ReadingUnit,
  StockEnd,
  StockUnit,
  Vessel,
  Weighed,
} from "./event.ts";
import type { Repeat, Scores, Verdict } from "./taste.ts";

/** Another watch on a wait, as somebody said. */
export interface Handed {
  readonly to: OtherWatch;
  /** The due time it was told, epoch ms. */
  readonly dueAt: number;
  /** Who watches, by initials. */
  readonly who?: string;
}

/** One passage through a step. Times in epoch ms. */
export interface Visit {
  readonly key: string;
  readonly step: string;
  readonly startedAt: number;
  readonly finishedAt?: number;
  /** When a timed wait ends or a watched wait first asks; absent where nothing is waited for. */
  readonly dueAt?: number;
  /** What else watches this wait, in the order it was said; absent where nothing does. */
  readonly handed?: readonly Handed[];
  /** The latest moment somebody answered its alarm. */
  readonly heardAt?: number;
}

/** Something that happened to the whole run. */
interface Happened {
  readonly act: string;
  readonly device: string;
  readonly at: number;
}

/** Something measured or said, by whom, and when. */
interface Said {
  readonly id: string;
  readonly act: string;
  readonly device: string;
  readonly at: number;
  readonly visit: string;
}

/** A measured volume, mass, temperature or count. */
export interface Reading extends Said {
  readonly what: ReadingKey;
  readonly value: number;
  readonly unit: ReadingUnit;
  /** Where it was read off a scale. */
  readonly weighed?: Weighed;
}

/** What was seen. */
export interface Seen extends Said {
  readonly look: Outcome;
}

/** A cloudy run poured back over the curd, ml. */
export interface RePour extends Said {
  readonly ml: number;
  readonly weighed?: Weighed;
}

/** What stands above the filter, as somebody said. */
export interface ShapeNoted extends Said {
  readonly shape: FilterShape;
}

/** An ingredient that has gone into the vessel. */
export interface LinePoured extends Said {
  readonly line: string;
}

/** Held-back spirit poured into the yield, beside what was advised and what was planned, ml. */
export interface TopUpPoured extends Said {
  readonly ml: number;
  readonly advised: number;
  readonly planned: number;
}

/** What was bottled, and until when it is kept. */
export interface Bottled extends Said {
  readonly bottles: readonly Bottles[];
  readonly useBy: number;
}

/** A measured yield, ml. */
export interface Yielded extends Said {
  readonly ml: number;
  readonly weighed?: Weighed;
  /** Phones had measured different ones, and this one was said to count. */
  readonly settles?: true;
}

/** What somebody tasted. */
export interface Tasted extends Happened {
  readonly scores: Scores;
  readonly words: readonly string[];
  /** Initials. */
  readonly by: string;
}

/** What somebody made of the batch. */
export interface Judged extends Happened {
  readonly verdict: Verdict;
  readonly repeat: Repeat;
  readonly text: string;
}

/** A picture that was taken. */
export interface Pictured extends Happened {
  readonly photo: string;
  readonly media: string;
  readonly bytes: number;
  readonly width: number;
  readonly height: number;
}

/** What went out of the bottles, as counted and in ml. */
export interface StockPoured extends Happened {
  readonly ml: number;
  readonly count: number;
  readonly unit: StockUnit;
}

/** A batch being made, as its log tells it. */
export interface Run {
  readonly id: string;
  readonly batch: string;
  readonly plan: Plan;
  readonly procedure: Procedure;
  readonly appVersion: string;
  readonly startedAt: number;
  /** When it has to be ready, epoch ms, where somebody said so. */
  readonly readyBy?: number;
  readonly visits: readonly Visit[];
  readonly poured: readonly LinePoured[];
  readonly readings: readonly Reading[];
  readonly looks: readonly Seen[];
  readonly rePours: readonly RePour[];
  readonly yields: readonly Yielded[];
  readonly topUps: readonly TopUpPoured[];
  readonly bottlings: readonly Bottled[];
  readonly notes: readonly { readonly at: number; readonly text: string }[];
  readonly shapes: readonly ShapeNoted[];
  readonly tares: readonly (Happened & { readonly vessel: Vessel; readonly grams: number })[];
  readonly stands: readonly (Happened & { readonly to: Stand })[];
  readonly hands: readonly (Happened & { readonly initials: string })[];
  readonly lots: readonly (Happened & {
    readonly ingredient: string;
    readonly lot: string;
    readonly useBy?: number;
  })[];
  readonly tastings: readonly Tasted[];
  readonly verdicts: readonly Judged[];
  readonly photos: readonly Pictured[];
  /** What was said of tags and pictures, in order: put on, or taken off. */
  readonly tagged: readonly (Happened & { readonly tag: string; readonly on: boolean })[];
  readonly unpictured: readonly (Happened & { readonly photo: string })[];
  readonly stockPoured: readonly StockPoured[];
  readonly stockEnded: readonly (Happened & { readonly how: StockEnd; readonly reason: string })[];
  /** Since when nobody works on it; its alarms are silent. */
  readonly pausedAt?: number;
  readonly abandoned?: { readonly at: number; readonly reason: string };
}

/**
 * Whether the work has gone past a visit that nobody finished: phones that saw different things in
 * the same glass went different ways, and the other way was walked on.
 */
function leftBehind(run: Run, at: number): boolean {
  const place = (visit: Visit | undefined): number =>
    run.procedure.steps.findIndex((step) => step.id === visit?.step);
  const here = place(run.visits[at]);
  return run.visits.some(
    (later, index) => index > at && later.finishedAt !== undefined && place(later) >= here,
  );
}

/**
 * The visit being worked on: the last one started that is not finished.
 *
 * @returns nothing once the last step is finished
 */
export function openVisit(run: Run): Visit | undefined {
  return run.visits.findLast((visit, at) => visit.finishedAt === undefined && !leftBehind(run, at));
}

/** Which passage through its step a visit is, from 1: the 2 of "re-pour#2". */
export const roundOf = ({ key }: Pick<Visit, "key">): number => Number(key.split("#")[1] ?? 1);

/**
 * The step a visit passes through.
 *
 * @throws RangeError when the run's procedure has no such step
 */
export const stepOfVisit = (run: Run, visit: Visit): Step => stepOf(run.procedure, visit.step);

/** How the run ended, where it has. */
export type Ending = { readonly how: "finished" | "abandoned"; readonly at: number };

/**
 * How and when a run ended.
 *
 * @returns nothing while it is being made
 */
export function endingOf(run: Run): Ending | undefined {
  if (run.abandoned !== undefined) return { how: "abandoned", at: run.abandoned.at };
  // A start that came alone, its first step still on the way from the other phone, ends nothing.
  if (run.visits.length === 0 || openVisit(run) !== undefined) return undefined;
  return { how: "finished", at: Math.max(...run.visits.map((one) => one.finishedAt ?? 0)) };
}

/** The measured yield, ml, where there is one: the latest word counts, it corrects what was said before. */
export const measuredYield = (run: Run): number | undefined => run.yields.at(-1)?.ml;
/** What was bottled, where it was. */
export const bottledOf = (run: Run): Bottled | undefined => run.bottlings.at(-1);
/** The spirit poured after the wash, where it was. */
export const topUpOf = (run: Run): TopUpPoured | undefined => run.topUps.at(-1);
