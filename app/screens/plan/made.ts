import type { Plan } from "../../../core/spec/plan.ts";

/** A batch as it is to be made: how many lots, and the plan of each. */
export interface Made {
  readonly lots: number;
  /** Exact. */
  readonly exact: Plan;
  /** As poured: rounded to the house's tools where it wants that. */
  readonly plan: Plan;
}
