import { INPUTS, type InputName, RESULTS, type ResultName, type Side } from "../compare/inputs.ts";
import { holm, type Pair, type RankCorrelation, rankCorrelation } from "./rank-correlation.ts";

/** Fewer batches are too few to say anything of them. */
export const FEWEST_TO_SAY = 8;
/** Below this, so much would show by chance in fewer than 1 in 20 such lists: convention. */
const STANDS_OUT = 0.05;

/** What is looked at: an input that is a figure, or the order of pouring as one of two. */
export type LookedAt = InputName | "order";

/** An input and a result that were looked at together. */
export interface Together extends RankCorrelation {
  readonly input: LookedAt;
  readonly result: ResultName;
  /** p, corrected for all that was looked at. */
  readonly corrected: number;
  /** So much is unlikely by chance, everything counted that was looked at. */
  readonly standsOut: boolean;
  readonly pairs: readonly Pair[];
}

/** What was found in some batches. */
export type Found =
  | { readonly type: "too-few"; readonly batches: number }
  | {
      readonly type: "found";
      readonly batches: number;
      /** Everything that could be looked at, the least likely by chance first. */
      readonly together: readonly Together[];
    };

function figureOf({ inputs, choices }: Side, name: LookedAt): number | undefined {
  if (name !== "order") return inputs[name];
  if (choices.order === undefined) return undefined;
  return choices.order === "punch-into-milk" ? 1 : 0;
}

function pairsOf(sides: readonly Side[], input: LookedAt, result: ResultName): readonly Pair[] {
  return sides.flatMap((side) => {
    const [x, y] = [figureOf(side, input), side.results[result]];
    return x === undefined || y === undefined ? [] : [{ x, y }];
  });
}

/** What curd keeps is the yield again: one of the two is enough. */
const LOOKED_FOR = RESULTS.filter((name) => name !== "curd-kept");

/**
 * Which inputs went together with which results in a bar's batches. It says nothing of why.
 *
 * @param sides - batches of one spec, or of one procedure
 * @returns too few below eight; then every input and result that at least eight batches noted and
 *   that was not always the same
 * @source `rankCorrelation`, corrected by `holm` over everything looked at
 */
export function whatMatters(sides: readonly Side[]): Found {
  if (sides.length < FEWEST_TO_SAY) return { type: "too-few", batches: sides.length };
  const looked = [...INPUTS, "order" as const].flatMap((input) =>
    LOOKED_FOR.flatMap((result) => {
      const pairs = pairsOf(sides, input, result);
      if (pairs.length < FEWEST_TO_SAY) return [];
      const found = rankCorrelation(pairs);
      return found === undefined ? [] : [{ input, result, pairs, ...found }];
    }),
  );
  const corrected = holm(looked.map(({ p }) => p));
  const together = looked.map((one, at) => {
    const p = corrected[at] ?? 1;
    return { ...one, corrected: p, standsOut: p < STANDS_OUT };
  });
  return {
    type: "found",
    batches: sides.length,
    together: together.toSorted((a, b) => a.p - b.p),
  };
}
