import type { Run, Yielded } from "./run.ts";

/**
 * Measured yields of which somebody has to say which one counts: the last word of each phone since
 * the question was last settled.
 *
 * @param run - as its log tells it
 * @returns each volume once, in the order of the phones; nothing where there is no question
 */
export function differingYields(run: Run): readonly Yielded[] {
  const since = run.yields.findLastIndex(({ settles }) => settles === true);
  const lastOf = new Map(run.yields.slice(Math.max(0, since)).map((one) => [one.device, one]));
  const byVolume = new Map([...lastOf.values()].map((one) => [one.ml, one]));
  return byVolume.size > 1 ? [...byVolume.values()] : [];
}
