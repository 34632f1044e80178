import type { Outcome } from "../../../core/method/procedure.ts";
import type { Answer } from "../../../core/run/answer.ts";
import type { Command } from "../../../core/run/command.ts";
import { openVisit, type Run, stepOfVisit } from "../../../core/run/run.ts";

/** What the barback answers at each reading of the test wash, ml. */
export interface WashAnswers {
  readonly milk: number;
  readonly cloudy: number;
  readonly yield: number;
  readonly topUp: number;
  readonly look: Outcome;
  readonly useBy: number;
}

export const USUAL: WashAnswers = {
  milk: 1000,
  cloudy: 300,
  yield: 4400,
  topUp: 400,
  look: "clear",
  useBy: 2_000_000_000_000,
};

function answerFor(needs: string | undefined, by: WashAnswers): Answer | undefined {
  switch (needs) {
    case "milk":
      return { of: "milk", ml: by.milk };
    case "cloudy-run":
      return { of: "cloudy-run", ml: by.cloudy };
    case "yield":
      return { of: "yield", ml: by.yield };
    case "top-up":
      return { of: "top-up", ml: by.topUp };
    case "bottled":
      return { of: "bottled", bottles: [{ count: 7, size: 700 }], useBy: by.useBy };
    case "brix":
      return { of: "brix", brix: 50 };
    default:
      return undefined;
  }
}

function outcomeFor(asks: "look" | "taste" | "rescue", by: WashAnswers): Outcome {
  if (asks === "look") return by.look;
  return asks === "taste" ? "right" : "accept";
}

/** The order that finishes the step a run stands at; nothing when it has ended. */
export function finishOpenStep(run: Run, by: WashAnswers = USUAL): Command | undefined {
  const visit = openVisit(run);
  if (visit === undefined) return undefined;
  const step = stepOfVisit(run, visit);
  const answer = answerFor(step.needs, by);
  return {
    type: "finish-step",
    visit: visit.key,
    ...(answer === undefined ? {} : { answer }),
    ...(step.asks === undefined ? {} : { look: outcomeFor(step.asks, by) }),
  };
}
