import type { Run, Tasted } from "../run/run.ts";
import { ASPECTS, type Aspect, type Scores } from "../run/taste.ts";

/** What several people tasted. */
export interface Tasting {
  /** The latest tasting of each taster, the latest first. */
  readonly tasters: readonly Tasted[];
  /** Arithmetic means over those who scored it, 0 to 10; nothing for what nobody scored. */
  readonly means: Scores;
  /** Each word with how many tasters said it, the most said first. */
  readonly words: readonly { readonly word: string; readonly tasters: number }[];
}

function meansOf(tasters: readonly Tasted[]): Scores {
  return Object.fromEntries(
    ASPECTS.flatMap((aspect: Aspect): readonly [Aspect, number][] => {
      const scored = tasters.flatMap(({ scores }) => scores[aspect] ?? []);
      const sum = scored.reduce((total, score) => total + score, 0);
      return scored.length === 0 ? [] : [[aspect, sum / scored.length]];
    }),
  );
}

function wordsOf(tasters: readonly Tasted[]): Tasting["words"] {
  const counts = new Map<string, number>();
  for (const word of tasters.flatMap(({ words }) => words)) {
    counts.set(word, (counts.get(word) ?? 0) + 1);
  }
  return [...counts]
    .map(([word, n]) => ({ word, tasters: n }))
    .sort((a, b) => b.tasters - a.tasters);
}

/**
 * What a batch tasted like. Of each taster the latest tasting counts, whole: what they leave out of
 * it they take back.
 *
 * @param run - as its log tells it
 * @returns nothing while nobody has tasted
 */
export function tastingOf(run: Run): Tasting | undefined {
  if (run.tastings.length === 0) return undefined;
  const latest = new Map(run.tastings.map((one) => [one.by, one]));
  const tasters = [...latest.values()].sort((a, b) => b.at - a.at);
  return { tasters, means: meansOf(tasters), words: wordsOf(tasters) };
}
