import { type Step, stepOf } from "../../method/procedure.ts";
import { usualPath } from "../../method/usual-path.ts";
import { openVisit, type Run } from "../../run/run.ts";

/** One passage of a run through a step: gone, going on, or still to come. */
export interface Passage {
  /** Unlike all others of the run: the step's own for the last passage through it. */
  readonly id: string;
  readonly step: Step;
  /** Epoch ms; absent while it is still to come. */
  readonly startedAt?: number;
  /** Epoch ms; absent until it is over. */
  readonly finishedAt?: number;
}

/**
 * The way a run takes: what it has been through, where it stands, then the usual way on from there.
 *
 * @param run - as its log tells it; one that is rescued or poured back again goes on from where it is
 * @returns nothing where it stands at no step
 */
export function pathOfRun(run: Run): readonly Passage[] {
  const open = openVisit(run);
  if (open === undefined) return [];
  const begun = run.visits.flatMap((visit) => {
    const { key, startedAt, finishedAt } = visit;
    const step = stepOf(run.procedure, visit.step);
    if (finishedAt !== undefined) return [{ id: key, step, startedAt, finishedAt }];
    return visit === open ? [{ id: key, step, startedAt }] : [];
  });
  const coming = usualPath(run.procedure, open.step).slice(1);
  const path: readonly Passage[] = [...begun, ...coming.map((step) => ({ id: step.id, step }))];
  return path.map((one, at) => {
    const again = path.some((later, then) => then > at && later.step.id === one.step.id);
    return again ? one : { ...one, id: one.step.id };
  });
}
