import type { Run } from "./run.ts";

/** Somebody who had a batch in hand, watched one or tasted it, by initials. */
export interface Named {
  /** Epoch ms. */
  readonly at: number;
  readonly initials: string;
}

/** More names than this are easier typed than looked for. Judgement. */
const MOST = 5;

const latestFirst = (named: readonly Named[]): readonly Named[] =>
  named.toSorted((a, b) => b.at - a.at);

/** Who had a batch in hand, watched or tasted it: the latest first, each name once, at most five. */
export function namedIn(run: Run): readonly Named[] {
  const named = [
    ...run.hands.map(({ at, initials }) => ({ at, initials })),
    ...run.tastings.map(({ at, by }) => ({ at, initials: by })),
    ...run.visits.flatMap(({ startedAt: at, handed = [] }) =>
      handed.flatMap(({ who }) => (who === undefined ? [] : [{ at, initials: who }])),
    ),
  ];
  const latest = new Map(named.toSorted((a, b) => a.at - b.at).map((one) => [one.initials, one]));
  return latestFirst([...latest.values()]).slice(0, MOST);
}

/**
 * Who has lately had a batch in hand, watched one or tasted it, by initials, the latest first.
 *
 * @param batches - any batches, in any order
 * @returns each name once, at most five
 */
export function knownInitials(
  batches: readonly { readonly named: readonly Named[] }[],
): readonly string[] {
  const latest = latestFirst(batches.flatMap(({ named }) => named));
  return [...new Set(latest.map(({ initials }) => initials))].slice(0, MOST);
}
