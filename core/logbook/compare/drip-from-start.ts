import { collectedIn, lastDrip } from "../../run/drip-outlook.ts";
import { measuredYield, type Run } from "../../run/run.ts";

/** How much had come through so long after a drip began. */
export interface DripPoint {
  /** ms */
  readonly forMs: number;
  readonly ml: number;
}

/**
 * The slow drip of a batch from its own beginning, to be laid over those of others: nothing at first,
 * every reading, and what was measured in the end.
 *
 * @returns nothing where nothing was read
 */
export function dripFromStart(run: Run): readonly DripPoint[] | undefined {
  const visit = lastDrip(run);
  if (visit === undefined) return undefined;
  const from = visit.startedAt;
  const readings = collectedIn(run, visit)
    .filter(({ at }) => at > from)
    .map(({ at, ml }) => ({ forMs: at - from, ml }));
  const ml = measuredYield(run);
  const end =
    visit.finishedAt === undefined || ml === undefined
      ? []
      : [{ forMs: visit.finishedAt - from, ml }];
  const points = [...readings, ...end];
  if (points.length === 0) return undefined;
  return [{ forMs: 0, ml: 0 }, ...points.toSorted((a, b) => a.forMs - b.forMs)];
}
