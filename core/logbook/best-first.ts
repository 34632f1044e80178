import type { Aspect, Repeat, Verdict } from "../run/taste.ts";
import type { EndedBatch } from "./logbook.ts";

/** What nobody has judged stands between fair and poor: it may be either. Judgement. */
const VERDICT_RANK: Readonly<Record<Verdict, number>> = { good: 3, fair: 2, poor: 0 };
const REPEAT_RANK: Readonly<Record<Repeat, number>> = { yes: 3, "with-changes": 2, no: 0 };
const NOT_SAID = 1;

/** More of these is better; sweetness, acid and spirit can be too much. Judgement. */
const MERITS: readonly Aspect[] = ["clarity", "colour", "aroma", "texture", "finish"];

/** Mean score of what can only be a merit, 0 to 10; nothing where nobody has tasted for it. */
function meritOf({ taste }: EndedBatch): number | undefined {
  const scores = MERITS.flatMap((aspect) => taste?.means[aspect] ?? []);
  if (scores.length === 0) return undefined;
  return scores.reduce((sum, score) => sum + score, 0) / scores.length;
}

const ranked = (row: EndedBatch): readonly number[] => [
  row.verdict === undefined ? NOT_SAID : VERDICT_RANK[row.verdict],
  row.wouldRepeat === undefined ? NOT_SAID : REPEAT_RANK[row.wouldRepeat],
  meritOf(row) ?? -1,
  row.ending.at,
];

function better(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((rank, place) => rank !== b[place]);
  return at < 0 ? 0 : (b[at] ?? 0) - (a[at] ?? 0);
}

/**
 * Batches by how good somebody said they were: the verdict, whether it would be made again, what was
 * tasted, and of equals the latest.
 */
export const bestFirst = (rows: readonly EndedBatch[]): readonly EndedBatch[] =>
  rows
    .map((row) => ({ row, rank: ranked(row) }))
    .toSorted((a, b) => better(a.rank, b.rank))
    .map(({ row }) => row);

/** Whether anybody has said anything by which batches can be told from each other. */
export const canBeRanked = (rows: readonly EndedBatch[]): boolean =>
  rows.some((row) => row.verdict !== undefined || row.taste !== undefined);
