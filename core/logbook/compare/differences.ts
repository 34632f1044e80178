import { HOUR, MINUTE } from "../../quantity/time-units-table.ts";
import { quartilesOf } from "../quartiles.ts";
import {
  CHOICES,
  type ChoiceName,
  INPUTS,
  type InputName,
  RESULTS,
  type ResultName,
  type Side,
} from "./inputs.ts";

/** How far sides lie apart in one thing. */
export interface Difference<Name extends string> {
  readonly name: Name;
  /** In the order of the sides; nothing where it was not noted. */
  readonly figures: readonly (number | undefined)[];
  /** The widest gap, in what usually lies between two batches. */
  readonly size: number;
  /** Where that "usually" comes from: this house's batches, or a stated scale. */
  readonly scaledBy: "house" | "stated";
}

/** Kinds that differ. */
export interface ChoiceDifference {
  readonly name: ChoiceName;
  readonly kinds: readonly (string | undefined)[];
}

/** What differed between some batches. */
export interface Differences {
  /** Kinds first: they have no size. */
  readonly choices: readonly ChoiceDifference[];
  /** The widest first; what is the same on every side is not among them. */
  readonly inputs: readonly Difference<InputName>[];
  readonly results: readonly Difference<ResultName>[];
}

/**
 * What is taken for a usual difference while a house has too few batches: judgement, each about what
 * a careful bar varies by without meaning to.
 */
const STATED: Readonly<Record<InputName | ResultName, number>> = {
  "milk-ratio": 0.02,
  "punch-strength": 0.01,
  "punch-sugar": 8,
  "punch-acid": 1,
  filters: 1,
  "degrees-curdle": 3,
  "degrees-drip": 2,
  "pour-time": 2 * MINUTE,
  "rest-time": 15 * MINUTE,
  "milk-days": 2,
  "yield-share": 0.015,
  "curd-kept": 0.05,
  "time-to-clear": 2 * MINUTE,
  passes: 1,
  "drip-time": HOUR,
  clarity: 1,
  verdict: 1,
};
/** Fewer batches do not say what usually varies: judgement. */
const FEWEST = 8;
/** Standard deviations in a quarter-to-quarter range of a normal. */
const QUARTERS = 1.349;
/** Figures nearer than this share of their scale are the same to anybody: judgement. */
const SAME = 0.2;
/** Jugs and clocks are read no finer than so much of a stated scale, however alike batches are. */
const FINEST = 0.25;

/**
 * What usually lies between batches: their spread, from the middle half so that one odd batch does
 * not widen it.
 *
 * @source interquartile range / 1.349 for a normal (textbook)
 */
function usualGap(figures: readonly number[], stated: number): number | undefined {
  if (figures.length < FEWEST) return undefined;
  const { low, high } = quartilesOf(figures);
  const spread = (high - low) / QUARTERS;
  return spread > 0 ? Math.max(spread, FINEST * stated) : undefined;
}

const present = (figures: readonly (number | undefined)[]): readonly number[] =>
  figures.filter((one) => one !== undefined);

function differenceOf<Name extends InputName | ResultName>(
  name: Name,
  figures: readonly (number | undefined)[],
  house: readonly number[],
): Difference<Name> | undefined {
  const known = present(figures);
  if (known.length < 2) return undefined;
  const gap = Math.max(...known) - Math.min(...known);
  const usual = usualGap(house, STATED[name]);
  const size = gap / (usual ?? STATED[name]);
  return size < SAME
    ? undefined
    : { name, figures, size, scaledBy: usual === undefined ? "stated" : "house" };
}

const bySize = (a: { readonly size: number }, b: { readonly size: number }): number =>
  b.size - a.size;

/**
 * What differed between some batches, the most telling first, beside what differed in what came of
 * it.
 *
 * @param sides - two or more
 * @param house - every batch like them, to know what usually varies
 * @source a gap in units of the house's usual spread, from eight batches on; of a stated scale before
 * @limits the order says what differed most, not what mattered
 */
export function differencesOf(sides: readonly Side[], house: readonly Side[]): Differences {
  const choices = CHOICES.map((name) => ({ name, kinds: sides.map((one) => one.choices[name]) }));
  const inputs = INPUTS.flatMap(
    (name) =>
      differenceOf(
        name,
        sides.map((one) => one.inputs[name]),
        present(house.map((one) => one.inputs[name])),
      ) ?? [],
  );
  const results = RESULTS.flatMap(
    (name) =>
      differenceOf(
        name,
        sides.map((one) => one.results[name]),
        present(house.map((one) => one.results[name])),
      ) ?? [],
  );
  return {
    choices: choices.filter(
      ({ kinds }) => new Set(kinds.filter((one) => one !== undefined)).size > 1,
    ),
    inputs: inputs.toSorted(bySize),
    results: results.toSorted(bySize),
  };
}
