import { worldOf } from "../../spec/wash-group.ts";
import type { BatchRecord } from "../record.ts";
import { kindOf, lessonOf, toldBy } from "./house-learning.ts";
import { FEWEST_TO_LEARN } from "./lesson-size-table.ts";
import type { Shrunk } from "./shrunk.ts";

/** How a wash of this kind usually comes to run clear: 8 in 10 between low and high. */
export interface ClearLesson {
  /** From the start of the first pass, ms. */
  readonly took: Pick<Shrunk, "mean" | "low" | "high">;
  /** How often it is poured back until then. */
  readonly passes: number;
  readonly batches: number;
}

/**
 * What a bar's other batches teach of when a wash will run clear.
 *
 * @param batches - every batch there is, the one that asks among them
 * @param runId - of the one that asks: it is not over, and does not teach itself
 * @returns nothing for a batch that is not washed, or where fewer than three batches told of it
 * @source as `lessonOf`
 */
export function clearLesson(
  batches: readonly BatchRecord[],
  runId: string,
): ClearLesson | undefined {
  const own = batches.find((batch) => batch.runId === runId);
  const kind = own && kindOf(own);
  if (own === undefined || kind === undefined) return undefined;
  const others = batches.filter((batch) => batch !== own && worldOf(batch) === worldOf(own));
  const took = lessonOf(others, "clear", kind);
  if (took.house < FEWEST_TO_LEARN) return undefined;
  const passes = lessonOf(others, "passes", kind);
  return { took, passes: passes.mean, batches: toldBy(took) };
}
