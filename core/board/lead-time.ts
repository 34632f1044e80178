import type { Procedure } from "../method/procedure.ts";
import type { Plan } from "../spec/plan.ts";
import { jobOf } from "./schedule/job-of.ts";
import { batchFacts } from "./schedule/prep-day.ts";

/**
 * How long a batch usually takes from its first step to its last, without a pause between them: the
 * least notice that it needs.
 *
 * @param plan - of the batch; a larger one drips longer
 * @param procedure - taken the usual way
 * @returns ms
 * @source as `jobOf` and `batchFacts`: the procedure's own times, the usual drip, an infusion's whole
 *   time; hours in which nobody works are not in it
 */
export function leadTimeOf(plan: Plan, procedure: Procedure): number {
  const { job } = jobOf(procedure, batchFacts({ id: "next", plan, procedure }, 0));
  return job.steps.reduce((sum, { forMs }) => sum + forMs, 0);
}
