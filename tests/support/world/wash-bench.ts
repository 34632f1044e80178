import { DAIRY_WASH } from "../../../core/method/dairy-wash.ts";
import type { Command } from "../../../core/run/command.ts";
import { openVisit } from "../../../core/run/run.ts";
import { planOf, runOf, TestBench } from "./run-events.ts";
import { finishOpenStep, USUAL } from "./wash-walk.ts";

const MINUTE = 60_000;
/** No walk of the wash takes more. */
const MOST_STEPS = 40;

/** The plan that these washes are made by. */
export const WASH_PLAN = planOf();

function walkTo(bench: TestBench, step: string | undefined, looks: typeof USUAL): void {
  for (let turn = 0; turn < MOST_STEPS; turn += 1) {
    const run = runOf(bench);
    const order = finishOpenStep(run, looks);
    if (openVisit(run)?.step === step || order === undefined) return;
    const refusal = bench.order(order);
    if (refusal !== undefined) throw new RangeError(`a walked step was refused: ${refusal}`);
    bench.now += MINUTE;
  }
}

/** A wash walked until it looks as it was told, to its end where it does. */
export function walked(bench = new TestBench(), looks = USUAL): TestBench {
  bench.start(WASH_PLAN);
  walkTo(bench, undefined, looks);
  return bench;
}

/** A wash that has come to a step, or to its end. */
export function benchAt(step?: string): TestBench {
  const bench = new TestBench();
  bench.start(WASH_PLAN);
  walkTo(bench, step, USUAL);
  const stands = openVisit(runOf(bench))?.step;
  if (stands !== step) throw new RangeError(`the walk should stand at ${step}, is at ${stands}`);
  return bench;
}

/** The order that starts such a wash. */
export const startOrder = (rest: object = {}): Command => ({
  type: "start-run",
  batch: "TW-0101",
  plan: WASH_PLAN,
  procedure: DAIRY_WASH,
  appVersion: "0",
  ...rest,
});

/** The order that finishes a visit. */
export const finishOrder = (visit: string, rest: object = {}): Command => ({
  type: "finish-step",
  visit,
  ...rest,
});
