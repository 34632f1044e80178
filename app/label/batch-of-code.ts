import { plainCode } from "../../core/label/batch-code.ts";
import type { BatchRecord } from "../../core/logbook/record.ts";

/**
 * The batch whose label carries a code, the youngest where several are called the same.
 *
 * @returns its run's id; nothing where no batch on this phone is called so
 */
export const batchOfCode = (
  text: string,
  records: readonly Pick<BatchRecord, "runId" | "batch" | "startedAt">[],
): string | undefined => {
  const asked = plainCode(text);
  if (asked === "") return undefined;
  return records
    .filter(({ batch }) => plainCode(batch) === asked)
    .sort((a, b) => b.startedAt - a.startedAt)[0]?.runId;
};
