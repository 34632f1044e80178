import { MINUTE } from "../../../core/quantity/time-units-table.ts";
import type { Command } from "../../../core/run/command.ts";
import { decide } from "../../../core/run/decide.ts";
import type { RunEvent } from "../../../core/run/event.ts";
import { foldRun } from "../../../core/run/fold.ts";
import { HLC_ZERO } from "../../../core/run/hlc.ts";
import { openVisit, type Run } from "../../../core/run/run.ts";
import { stampDrafts } from "../../../core/run/stamp.ts";

type Finish = Omit<Extract<Command, { type: "finish-step" }>, "type" | "visit">;

/** Writes one invented log, order by order, as the app would have. */
export interface Player {
  readonly events: () => readonly RunEvent[];
  readonly run: () => Run;
  /** Carries out an order so many minutes after the last one. */
  readonly order: (command: Command, minutes: number) => void;
  /** Finishes the open step so many minutes after the last order. */
  readonly finish: (minutes: number, answered?: Finish) => void;
  /** The open passage. */
  readonly visit: () => string;
}

/**
 * Begins a log.
 *
 * @param runId - its events are named after it
 * @param at - epoch ms
 * @throws RangeError when the core refuses an order: the invented story must hold
 */
export function playerOf(runId: string, at: number): Player {
  let log: readonly RunEvent[] = [];
  let now = at;
  const run = (): Run => {
    const folded = foldRun(log);
    if (folded === undefined) throw new RangeError(`${runId} has not been started`);
    return folded;
  };
  const order = (command: Command, minutes: number): void => {
    now += Math.round(minutes * MINUTE);
    const decision = decide(log, foldRun(log), command, now);
    if (!decision.ok) throw new RangeError(`${runId} refused: ${decision.refusal}`);
    let made = 0;
    const events = stampDrafts(decision.value, {
      runId,
      device: "demo-phone",
      act: `${runId}-act-${log.length}`,
      now,
      last: log.at(-1)?.hlc ?? HLC_ZERO,
      notBefore: log.at(-1)?.at ?? 0,
      newId: () => {
        made += 1;
        return `${runId}-${log.length}-${made}`;
      },
    });
    log = [...log, ...events];
  };
  const visit = (): string => openVisit(run())?.key ?? "none";
  return {
    events: () => log,
    run,
    order,
    visit,
    finish: (minutes, answered = {}) =>
      order({ type: "finish-step", visit: visit(), ...answered }, minutes),
  };
}
