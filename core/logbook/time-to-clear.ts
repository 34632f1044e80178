import type { LearntWaits } from "../method/learnt-times.ts";
import { type Run, stepOfVisit, type Visit } from "../run/run.ts";
import { FEWEST_TO_LEARN, LATEST_TO_LEARN } from "./learn/lesson-size-table.ts";
import { quartilesOf } from "./quartiles.ts";

/** How one batch came to run clear. Times in ms. */
export interface Cleared {
  /** From the start of the first pass to the look that said "clear". */
  readonly took: number;
  /** How often it was poured back until then. */
  readonly passes: number;
  /** How long each pass waited until it was answered, by step. */
  readonly waits: Readonly<Record<string, number>>;
}

/** A batch as this lesson needs it. */
export interface MayHaveCleared {
  readonly runId: string;
  readonly procedureId: string;
  readonly startedAt: number;
  readonly cleared?: Cleared;
}

/** How long a pass waited until it was answered; the one that asks, until it ran clear. */
function waitsOf(passes: readonly Visit[], clear: Visit, at: number): Cleared["waits"] {
  const waits = new Map<string, number>();
  for (const { step, startedAt, finishedAt } of passes) {
    if (step !== clear.step && finishedAt !== undefined && !waits.has(step)) {
      waits.set(step, finishedAt - startedAt);
    }
  }
  waits.set(clear.step, at - clear.startedAt);
  return Object.fromEntries(waits);
}

/** When and after how many passes a run was said to be clear; nothing where nobody said so. */
export function clearedIn(run: Run): Cleared | undefined {
  const passes = run.visits.filter((visit) => stepOfVisit(run, visit).work === "pass");
  const [first] = passes;
  const look = run.looks.find(
    (one) => one.look === "clear" && passes.some(({ key }) => key === one.visit),
  );
  const clear = passes.find(({ key }) => key === look?.visit);
  if (first === undefined || look === undefined || clear === undefined) return undefined;
  const took = look.at - first.startedAt;
  const before = run.rePours.filter(({ at }) => at <= look.at);
  const waits = waitsOf(passes, clear, look.at);
  // A clock that was put back leaves a time of nothing: no batch teaches that.
  if (!(took > 0)) return undefined;
  return { took, passes: new Set(before.map(({ visit }) => visit)).size, waits };
}

/**
 * How long each pass of this bar's batches is usually waited for, until it ran clear.
 *
 * @param batches - every batch there is; the latest 20 of the procedure that ran clear count
 * @param procedureId - of the runs to learn from
 * @param except - the run that asks, which is not over yet
 * @returns nothing below three batches
 * @source medians; the fewest and the most batches by judgement
 */
export function timeToClear(
  batches: readonly MayHaveCleared[],
  procedureId: string,
  except?: string,
): LearntWaits | undefined {
  const cleared = batches
    .filter((one) => one.procedureId === procedureId && one.runId !== except)
    .toSorted((a, b) => b.startedAt - a.startedAt)
    .flatMap((one) => one.cleared ?? [])
    .slice(0, LATEST_TO_LEARN);
  if (cleared.length < FEWEST_TO_LEARN) return undefined;
  const steps = new Set(cleared.flatMap(({ waits }) => Object.keys(waits)));
  const waits = [...steps].map((step) => {
    const seen = cleared.flatMap(({ waits: own }) =>
      Object.hasOwn(own, step) ? (own[step] ?? []) : [],
    );
    return [step, quartilesOf(seen).median] as const;
  });
  return {
    batches: cleared.length,
    waits: Object.fromEntries(waits),
  };
}
