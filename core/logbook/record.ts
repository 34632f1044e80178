import { actualFinal } from "../run/actual.ts";
import { shapeOf } from "../run/drip-outlook.ts";
import type { Bottles } from "../run/event.ts";
import { type Named, namedIn } from "../run/initials.ts";
import { photosOf, tagsOf } from "../run/keepsakes.ts";
import { bottledOf, type Ending, endingOf, type Run, stepOfVisit, topUpOf } from "../run/run.ts";
import { type Stock, stockOf } from "../run/stock.ts";
import type { Repeat, Scores, Verdict } from "../run/taste.ts";
import { milkPoured, passesOf } from "../run/wash-progress.ts";
import type { Plan } from "../spec/plan.ts";
import { punchMeasuredOut } from "../spec/plan-use.ts";
import type { FilterShape } from "../spec/spec.ts";
import { type Balance, balanceIn } from "./balance.ts";
import { type MadeHow, madeHow } from "./compare/made-how.ts";
import { tastingOf } from "./tasting.ts";
import { type Cleared, clearedIn } from "./time-to-clear.ts";
import { type YieldShare, yieldShareOf } from "./yield-share.ts";

/** How a batch was washed. Volumes in ml. */
export interface WashRecord {
  readonly dairy: NonNullable<Plan["milk"]>["dairy"];
  readonly milkMl: number;
  /** Punch as measured before it met the milk. */
  readonly punchMl: number;
  readonly order: NonNullable<Plan["spec"]["wash"]>["order"];
  readonly filters: number;
  readonly shape: FilterShape;
}

/** What a batch tasted like. */
export interface TasteRecord {
  /** 0 to 10. */
  readonly means: Scores;
  readonly tasters: number;
  readonly words: readonly string[];
}

/** How long one kind of work took in a batch, every passage together. */
export interface WorkTook {
  /** ms */
  readonly took: number;
  readonly visits: number;
}

/**
 * A batch as lists, learning and comparison need it: small, plain, worked out from its log and never
 * the truth itself. Times in epoch ms.
 */
export interface BatchRecord {
  readonly runId: string;
  readonly specId: string;
  readonly name: string;
  readonly batch: string;
  readonly procedureId: string;
  readonly startedAt: number;
  /** Invented, and removed with the demo. */
  readonly demo: boolean;
  /** Nothing while it is being made. */
  readonly ending?: Ending & { readonly reason?: string };
  readonly yielded?: YieldShare;
  /** How often the cloudy run was poured back. */
  readonly passes: number;
  readonly cleared?: Cleared;
  readonly wash?: WashRecord;
  readonly made: MadeHow;
  /** Finished work by kind. */
  readonly work: Readonly<Record<string, WorkTook>>;
  /** Every temperature that was logged, in order, degrees C. */
  readonly temperatures: readonly number[];
  /** In the bottle: by the plan, and by what was measured. */
  readonly planned: Balance;
  readonly actual: Balance;
  /** Held-back spirit, ml. */
  readonly topUp?: { readonly planned: number; readonly poured: number };
  readonly bottled?: {
    readonly at: number;
    readonly bottles: readonly Bottles[];
    readonly useBy: number;
  };
  /** ml of one serve, from the bottle. */
  readonly pour: number;
  /** What went into it, by name. */
  readonly ingredients: readonly string[];
  /** Whose hands it was in. */
  readonly named: readonly Named[];
  /** How it was sized when it was planned. */
  readonly size: Plan["size"];
  /** Mean scores and what was said; nothing while nobody has tasted. */
  readonly taste?: TasteRecord;
  readonly verdict?: Verdict;
  readonly wouldRepeat?: Repeat;
  readonly tags: readonly string[];
  readonly stock?: Stock;
  /** Pictures that were not removed. */
  readonly photos: number;
  /** The beginning of its notes, to be searched. */
  readonly notes: string;
}

function washIn(run: Run): { wash?: WashRecord } {
  const { milk, spec } = run.plan;
  if (milk === undefined || spec.wash === undefined) return {};
  const { order, filters } = spec.wash;
  const punchMl = punchMeasuredOut(run.plan);
  const milkMl = milkPoured(run);
  return {
    wash: { dairy: milk.dairy, milkMl, punchMl, order, filters, shape: shapeOf(run) },
  };
}

function workIn(run: Run): Readonly<Record<string, WorkTook>> {
  const work = new Map<string, WorkTook>();
  for (const visit of run.visits) {
    if (visit.finishedAt === undefined) continue;
    const kind = stepOfVisit(run, visit).work;
    const before = work.get(kind) ?? { took: 0, visits: 0 };
    const took = before.took + visit.finishedAt - visit.startedAt;
    work.set(kind, { took, visits: before.visits + 1 });
  }
  return Object.fromEntries(work);
}

function endingIn(run: Run): Pick<BatchRecord, "ending"> {
  const ending = endingOf(run);
  if (ending === undefined) return {};
  return {
    ending: run.abandoned === undefined ? ending : { ...ending, reason: run.abandoned.reason },
  };
}

function bottledIn(run: Run): Pick<BatchRecord, "bottled"> {
  const bottled = bottledOf(run);
  if (bottled === undefined) return {};
  const { at, bottles, useBy } = bottled;
  return { bottled: { at, bottles, useBy } };
}

/** Enough to find a batch by, and no more: the whole notes stay in its log. */
const NOTES_KEPT = 300;
const WORDS_KEPT = 12;

function tasteIn(run: Run): Pick<BatchRecord, "taste"> {
  const tasting = tastingOf(run);
  if (tasting === undefined) return {};
  const { means, tasters } = tasting;
  const words = tasting.words.slice(0, WORDS_KEPT).map(({ word }) => word);
  return { taste: { means, tasters: tasters.length, words } };
}

function afterwardsIn(run: Run) {
  const judged = run.verdicts.at(-1);
  const stock = stockOf(run);
  const notes = [...run.notes.map(({ text }) => text), ...(judged ? [judged.text] : [])];
  return {
    size: run.plan.size,
    ...tasteIn(run),
    ...(judged === undefined ? {} : { verdict: judged.verdict, wouldRepeat: judged.repeat }),
    tags: tagsOf(run),
    ...(stock === undefined ? {} : { stock }),
    photos: photosOf(run).length,
    notes: notes.join(" ").trim().slice(0, NOTES_KEPT),
  };
}

/** What lists and learning need of a batch. */
export function recordOf(run: Run): BatchRecord {
  const { plan } = run;
  const yielded = yieldShareOf(run);
  const cleared = clearedIn(run);
  const topUp = topUpOf(run);
  const milk = plan.milk === undefined ? [] : [plan.milk.name];
  return {
    runId: run.id,
    specId: plan.spec.id,
    name: plan.spec.name,
    batch: run.batch,
    procedureId: run.procedure.id,
    startedAt: run.startedAt,
    demo: plan.spec.demo === true,
    ...endingIn(run),
    ...(yielded === undefined ? {} : { yielded }),
    passes: passesOf(run),
    ...(cleared === undefined ? {} : { cleared }),
    ...washIn(run),
    made: madeHow(run),
    work: workIn(run),
    temperatures: run.readings.flatMap(({ what, value }) =>
      what === "temperature" ? [value] : [],
    ),
    planned: balanceIn(plan.final),
    actual: balanceIn(actualFinal(run)),
    ...(topUp === undefined ? {} : { topUp: { planned: topUp.planned, poured: topUp.ml } }),
    ...bottledIn(run),
    pour: plan.spec.serve.pour,
    ingredients: [...new Set([...plan.lines.map(({ name }) => name), ...milk])],
    named: namedIn(run),
    ...afterwardsIn(run),
  };
}
