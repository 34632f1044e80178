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
  /** Every standing answer where phones measured different yields, ml; otherwise empty. */
  readonly yieldsDiffer: readonly number[];
  readonly topUp?: TopUpPoured;
  readonly bottled?: Bottled;
  readonly passes: number;
  readonly steps: readonly StepTook[];
}

/** The last word of each phone; two that differ are both shown. */
function differingYields(run: Run): readonly number[] {
  const lastOf = new Map(run.yields.map(({ device, ml }) => [device, ml]));
  const values = [...new Set(lastOf.values())];
  return values.length > 1 ? values : [];
}

/** What a batch came to so far. */
export function batchFactsOf(run: Run): BatchFacts {
  const yielded = yieldShareOf(run);
  const topUp = topUpOf(run);
  const bottled = bottledOf(run);
  return {
    ...(yielded === undefined ? {} : { yielded }),
    yieldsDiffer: differingYields(run),
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
