import type { Procedure, Step } from "../../../core/method/procedure.ts";
import type { RunEvent } from "../../../core/run/event.ts";
import { demoSpec, planned } from "./play-run.ts";
import { TestBench } from "./run-events.ts";

/** A batch that does nothing but wait. */
export interface Wait {
  readonly runId: string;
  readonly batch: string;
  /** When it began to wait, epoch ms. */
  readonly from: number;
  /** ms */
  readonly waitFor: number;
  readonly step?: Partial<Step>;
  /** An invented spec of the demo set. */
  readonly spec?: string;
}

/** The log of a batch that has just begun to wait. */
export function waiting(wait: Wait): readonly RunEvent[] {
  const { runId, batch, from, waitFor, step, spec = "Pear Beacon" } = wait;
  const stands: Step = { id: "curdle", kind: "timed-wait", work: "rest", branches: [], waitFor };
  const after: Step = { id: "yield", kind: "reading", work: "yield", needs: "yield", branches: [] };
  const procedure: Procedure = { id: "stands", version: 1, steps: [{ ...stands, ...step }, after] };
  const bench = new TestBench(from, "phone-a", runId);
  const plan = planned(demoSpec(spec));
  const refused = bench.order({ type: "start-run", batch, plan, procedure, appVersion: "0" });
  if (refused !== undefined) throw new RangeError(`refused: ${refused}`);
  // Ids of their own: several of them lie in one log.
  return bench.events.map((event) => ({
    ...event,
    id: `${runId}-${event.id}`,
    act: `${runId}-${event.act}`,
  }));
}
