import type { Procedure } from "../../../core/method/procedure.ts";
import { procedureFor } from "../../../core/method/procedures.ts";
import type { Command } from "../../../core/run/command.ts";
import { decide } from "../../../core/run/decide.ts";
import type { RunEvent } from "../../../core/run/event.ts";
import { foldRun } from "../../../core/run/fold.ts";
import { HLC_ZERO } from "../../../core/run/hlc.ts";
import { openVisit, type Run } from "../../../core/run/run.ts";
import { stampDrafts } from "../../../core/run/stamp.ts";
import type { Ingredient } from "../../../core/spec/ingredient.ts";
import type { Plan } from "../../../core/spec/plan.ts";
import type { BatchSize, Spec } from "../../../core/spec/spec.ts";
import { DEMO_SPECS } from "./demo-bar.ts";
import { cupboardWith, planFor } from "./punch-spec.ts";

const MINUTE = 60_000;

/** An invented spec of the demo set. */
export function demoSpec(name: string): Spec {
  const found = DEMO_SPECS.find((spec) => spec.name === name);
  if (found === undefined) throw new RangeError(`no demo spec ${name}`);
  return found;
}

/** A plan that must exist: six bottles of 750 ml unless told. */
export const planned = (
  spec: Spec,
  size: BatchSize = { by: "bottles", bottles: 6, size: 750 },
  own: readonly Ingredient[] = [],
): Plan => planFor(spec, size, cupboardWith(...own));

function procedureOf({ spec }: Plan): Procedure {
  const found = procedureFor(spec, []);
  if (found === undefined) throw new RangeError(`no procedure for ${spec.name}`);
  return found;
}

/** A log that is written order by order, as the app would. */
export interface Played {
  readonly events: readonly RunEvent[];
  readonly run: Run;
  /** Carries out an order some minutes later; throws when it is refused. */
  readonly then: (command: Command, minutes?: number, device?: string) => Played;
  /** Finishes the open step some minutes later. */
  readonly finish: (with_?: Finish, minutes?: number, device?: string) => Played;
}

type Finish = Omit<Extract<Command, { type: "finish-step" }>, "type" | "visit">;

function played(runId: string, events: readonly RunEvent[], now: number): Played {
  const run = foldRun(events);
  if (run === undefined) throw new RangeError("the log has no start");
  const then: Played["then"] = (command, minutes = 1, device = "phone-a") =>
    append(runId, events, command, now + minutes * MINUTE, device);
  return {
    events,
    run,
    then,
    finish: (with_ = {}, minutes, device) => {
      const visit = openVisit(run)?.key ?? "none";
      return then({ type: "finish-step", visit, ...with_ }, minutes, device);
    },
  };
}

function append(
  runId: string,
  log: readonly RunEvent[],
  command: Command,
  now: number,
  device: string,
): Played {
  const decision = decide(log, foldRun(log), command, now);
  if (!decision.ok) throw new RangeError(`refused: ${decision.refusal}`);
  let made = 0;
  const newId = () => `${runId}-${log.length}-${made++}`;
  const events = stampDrafts(decision.value, {
    runId,
    device,
    act: `${runId}-act-${log.length}`,
    now,
    last: log.at(-1)?.hlc ?? HLC_ZERO,
    notBefore: log.at(-1)?.at ?? 0,
    newId,
  });
  return played(runId, [...log, ...events], now);
}

/** A log that came from elsewhere, to be written on. */
export const resumed = (events: readonly RunEvent[]): Played =>
  played(events[0]?.runId ?? "", events, Math.max(...events.map(({ at }) => at)));

/** A batch that has just been started. */
export function started(
  runId: string,
  batch: string,
  at: number,
  plan: Plan = planned(demoSpec("Pear Beacon")),
  procedure: Procedure = procedureOf(plan),
): Played {
  const command = { type: "start-run", batch, plan, procedure, appVersion: "0.0.0-test" } as const;
  return append(runId, [], command, at, "phone-a");
}

/** What was measured in a whole wash, ml. */
export interface Measured {
  readonly yield: number;
  readonly topUp: number;
  readonly useBy: number;
  readonly bottles?: readonly { readonly count: number; readonly size: number }[];
}

/** A batch up to the end of its slow drip: 7 h 19 min after the start, one pass. */
export function dripped(begun: Played): Played {
  const milk = begun.run.plan.milk?.ml ?? 0;
  return begun
    .finish({}, 20)
    .finish({ answer: { of: "milk", ml: milk } }, 2)
    .finish({}, 5)
    .finish({}, 60)
    .finish({}, 4)
    .finish({}, 2)
    .finish({ answer: { of: "cloudy-run", ml: 400 } }, 3)
    .finish({ look: "clear" }, 3)
    .finish({}, 340);
}

/** A batch made from start to label. */
export function madeWhole(begun: Played, measured: Measured): Played {
  const { bottles = [{ count: 6, size: 750 }], useBy } = measured;
  return dripped(begun)
    .finish({ answer: { of: "yield", ml: measured.yield } }, 5)
    .finish({ answer: { of: "top-up", ml: measured.topUp } }, 5)
    .finish({ answer: { of: "bottled", bottles, useBy } }, 15)
    .finish({}, 10);
}
