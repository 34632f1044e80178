import type { Planned } from "../../../core/board/planned.ts";
import { procedureFor } from "../../../core/method/procedures.ts";
import { demoSpec, planned } from "./play-run.ts";

/** A planned batch of a demo spec. */
export function plannedBatch(
  id: string,
  readyBy: number,
  name = "Pear Beacon",
  rest: Partial<Planned> = {},
): Planned {
  const plan = planned(demoSpec(name));
  const procedure = procedureFor(plan.spec, []);
  if (procedure === undefined) throw new RangeError(`no procedure for ${name}`);
  return { id, plan, procedure, readyBy, changes: [], ...rest };
}
