import type { BatchSize } from "../../../core/spec/spec.ts";

/** What bottles usually hold, ml: common practice, no source. */
const USUAL = [500, 700, 750, 1000];
const FIRST = 700;

/** Sizes that may be filled, ml, and the one to begin with. */
export interface BottleSizes {
  readonly sizes: readonly number[];
  readonly first: number;
}

/** The usual sizes, and the one that the batch was planned for, which comes first. */
export function bottleSizes(planned: BatchSize): BottleSizes {
  const first = planned.by === "bottles" ? planned.size : FIRST;
  return { sizes: [...new Set([...USUAL, first])].sort((a, b) => a - b), first };
}
