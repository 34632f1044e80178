import { type Bottled, bottledOf, type Run, type TopUpPoured, topUpOf } from "../run/run.ts";
import { passesOf } from "../run/wash-progress.ts";
import { type YieldShare, yieldShareOf } from "./yield-share.ts";

/** How long a passage through a step took. */
export interface StepTook {
  /** "re-pour#2" is the second passage through "re-pour". */
  readonly visit: string;
  readonly step: string;
  /** ms; absent while it is not finished. */
  readonly took?: number;
}

/** What a batch came to, for the head of its log. */
export interface BatchFacts {
  readonly yielded?: YieldShare;
  readonly topUp?: TopUpPoured;
  readonly bottled?: Bottled;
  readonly passes: number;
  readonly steps: readonly StepTook[];
}

/** What a batch came to so far. */
export function batchFactsOf(run: Run): BatchFacts {
  const yielded = yieldShareOf(run);
  const topUp = topUpOf(run);
  const bottled = bottledOf(run);
  return {
    ...(yielded === undefined ? {} : { yielded }),
    ...(topUp === undefined ? {} : { topUp }),
    ...(bottled === undefined ? {} : { bottled }),
    passes: passesOf(run),
    steps: run.visits.map(({ key, step, startedAt, finishedAt }) => ({
      visit: key,
      step,
      ...(finishedAt === undefined ? {} : { took: finishedAt - startedAt }),
    })),
  };
}
