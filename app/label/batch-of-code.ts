import type { BatchRecord } from "../../core/logbook/record.ts";

const plain = (name: string): string => name.trim().toUpperCase();

/**
 * The batch whose label carries a code, the youngest where several are called the same.
 *
 * @returns its run's id; nothing where no batch on this phone is called so
 */
export const batchOfCode = (
  text: string,
  records: readonly Pick<BatchRecord, "runId" | "batch" | "startedAt">[],
): string | undefined =>
  records
    .filter(({ batch }) => plain(batch) === plain(text) && plain(text) !== "")
    .sort((a, b) => b.startedAt - a.startedAt)[0]?.runId;
