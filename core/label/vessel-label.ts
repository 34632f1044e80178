import { type Stand, type Step, stepOf } from "../method/procedure.ts";
import { alarmsOf } from "../run/alarm.ts";
import { openVisit, type Run } from "../run/run.ts";
import { standsNow } from "../run/standings.ts";
import type { Allergen } from "../spec/allergen-table.ts";
import { allergensOf } from "../spec/declared.ts";

/** What stands on a vessel while it waits. Times in epoch ms. */
export interface VesselLabel {
  /** What the batch is called on the bench. */
  readonly batch: string;
  readonly name: string;
  readonly step: Step;
  readonly since: number;
  readonly dueAt: number;
  /** Where it belongs: cold or frozen it has to be kept so. */
  readonly stands: Stand;
  readonly allergens: readonly Allergen[];
}

/**
 * The label of a vessel that stands and waits: who finds it knows what it is and when it is due.
 *
 * @param run - as its log tells it
 * @returns nothing where nothing is waited for
 * @limits the due time is that of the log at this moment; a forecast may move it
 */
export function vesselLabelOf(run: Run): VesselLabel | undefined {
  const visit = openVisit(run);
  const [alarm] = alarmsOf(run);
  if (visit === undefined || alarm === undefined) return undefined;
  return {
    batch: run.batch,
    name: run.plan.spec.name,
    step: stepOf(run.procedure, visit.step),
    since: visit.startedAt,
    dueAt: alarm.dueAt,
    stands: standsNow(run),
    allergens: allergensOf(run.plan.ingredients),
  };
}
