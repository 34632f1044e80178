import type { Run } from "./run.ts";

/** More names than this are easier typed than looked for. Judgement. */
const MOST = 5;

/**
 * Who has lately had a batch in hand or watched one, by initials, the latest first.
 *
 * @param runs - any batches, in any order
 * @returns each name once, at most five
 */
export function knownInitials(runs: readonly Run[]): readonly string[] {
  const named = runs.flatMap((run) => [
    ...run.hands.map(({ at, initials }) => ({ at, initials })),
    ...run.visits.flatMap(({ startedAt: at, handed = [] }) =>
      handed.flatMap(({ who }) => (who === undefined ? [] : [{ at, initials: who }])),
    ),
  ]);
  const latest = named.sort((a, b) => b.at - a.at).map(({ initials }) => initials);
  return [...new Set(latest)].slice(0, MOST);
}
