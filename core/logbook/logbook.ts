import { type Ending, endingOf, type Run } from "../run/run.ts";
import { passesOf } from "../run/wash-progress.ts";
import { type YieldShare, yieldShareOf } from "./yield-share.ts";

/** A batch that has ended, as one line of the logbook. */
export interface EndedBatch {
  readonly runId: string;
  readonly name: string;
  readonly batch: string;
  /** Epoch ms. */
  readonly startedAt: number;
  readonly ending: Ending;
  /** Why it was given up, as typed. */
  readonly reason?: string;
  readonly yielded?: YieldShare;
  readonly passes: number;
}

function ended(run: Run): readonly EndedBatch[] {
  const ending = endingOf(run);
  if (ending === undefined) return [];
  const yielded = yieldShareOf(run);
  return [
    {
      runId: run.id,
      name: run.plan.spec.name,
      batch: run.batch,
      startedAt: run.startedAt,
      ending,
      passes: passesOf(run),
      ...(run.abandoned === undefined ? {} : { reason: run.abandoned.reason }),
      ...(yielded === undefined ? {} : { yielded }),
    },
  ];
}

/** Batches that were finished or given up, the latest ended first. */
export function logbookOf(runs: readonly Run[]): readonly EndedBatch[] {
  return runs.flatMap(ended).sort((a, b) => b.ending.at - a.ending.at);
}
