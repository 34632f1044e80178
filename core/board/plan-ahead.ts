import type { Procedure } from "../method/procedure.ts";
import { procedureFor } from "../method/procedures.ts";
import type { Cupboard } from "../spec/batch-amounts.ts";
import type { SpecBook } from "../spec/house-made.ts";
import type { HouseRules } from "../spec/house-rules.ts";
import { partsToMake } from "../spec/parts-to-make.ts";
import { planBatch } from "../spec/plan-batch.ts";
import type { Planned } from "./planned.ts";

/** What a house plans with. */
export interface PlanningHouse {
  readonly cupboard: Cupboard;
  readonly specs: SpecBook;
  readonly rules: HouseRules;
  readonly procedures: readonly Procedure[];
  /** A fresh id for each batch. */
  readonly newId: () => string;
}

/** Batches to be made before another, and what could not be planned. */
export interface Parts {
  readonly planned: readonly Planned[];
  /** Names of house-made ingredients whose spec could not be planned: make them as you know. */
  readonly unplanned: readonly string[];
}

/**
 * The batches that have to be made before a batch: one for each ingredient that the house makes
 * itself, and in turn for theirs, the first to be made last in the list.
 *
 * @param batch - planned for its own moment
 * @param house - its cupboard, specs and procedures
 * @returns batches with the same ready-by: the schedule brings each forward to when it is needed
 */
export function partsOf(
  batch: Planned,
  house: PlanningHouse,
  within: ReadonlySet<string> = new Set(),
): Parts {
  const making = new Set([...within, batch.plan.spec.id]);
  const planned: Planned[] = [];
  const unplanned: string[] = [];
  for (const { spec, ml, name } of partsToMake(batch.plan, house.specs, making)) {
    const size = { by: "volume", volume: ml } as const;
    const plan = planBatch(spec, house.cupboard, size, house.rules);
    const procedure = procedureFor(spec, house.procedures);
    if (!plan.ok || procedure === undefined) {
      unplanned.push(name);
      continue;
    }
    const { readyBy, id: madeFor } = batch;
    const part = { id: house.newId(), plan: plan.value, procedure, readyBy, changes: [], madeFor };
    const before = partsOf(part, house, making);
    planned.push(part, ...before.planned);
    unplanned.push(...before.unplanned);
  }
  return { planned, unplanned };
}
