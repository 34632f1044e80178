import type { BatchRecord } from "./record.ts";

/** A batch that has ended. */
export type EndedBatch = BatchRecord & { readonly ending: NonNullable<BatchRecord["ending"]> };

const hasEnded = (record: BatchRecord): record is EndedBatch => record.ending !== undefined;

/** Batches that were finished or given up, the latest ended first. */
export const logbookOf = (records: readonly BatchRecord[]): readonly EndedBatch[] =>
  records.filter(hasEnded).toSorted((a, b) => b.ending.at - a.ending.at);
