import type { BatchRecord } from "../record.ts";

/** What goes into a batch, as figures that can be set side by side. */
export const INPUTS = [
  "milk-ratio",
  "punch-strength",
  "punch-sugar",
  "punch-acid",
  "filters",
  "degrees-curdle",
  "degrees-drip",
  "pour-time",
  "rest-time",
  "milk-days",
] as const;
/** Inputs that are kinds rather than figures. */
export const CHOICES = ["order", "shape", "dairy"] as const;
/** What comes out of it. */
export const RESULTS = [
  "yield-share",
  "curd-kept",
  "time-to-clear",
  "passes",
  "drip-time",
  "clarity",
  "verdict",
] as const;

/** An input that is a figure. */
export type InputName = (typeof INPUTS)[number];
/** An input that is a kind. */
export type ChoiceName = (typeof CHOICES)[number];
/** A result. */
export type ResultName = (typeof RESULTS)[number];

/** Any figures by name; what was not noted is not there. */
type Figures<Name extends string> = Readonly<Partial<Record<Name, number>>>;

/** A batch, or a plan, as it is set beside others. Shares and strengths 0 to 1, times ms, g per L. */
export interface Side {
  readonly inputs: Figures<InputName>;
  readonly choices: Readonly<Partial<Record<ChoiceName, string>>>;
  readonly results: Figures<ResultName>;
}

/** "poor", "fair" and "good" in that order: only their order is looked at. */
const RANK = { poor: 0, fair: 1, good: 2 } as const;

type Found<Name extends string> = readonly (readonly [Name, number | undefined])[];

/** A figure that was not noted is left out, not taken for nothing. */
function noted<Name extends string>(found: Found<Name>): Figures<Name> {
  const kept: Partial<Record<Name, number>> = {};
  for (const [name, figure] of found) {
    if (figure !== undefined && Number.isFinite(figure)) kept[name] = figure;
  }
  return kept;
}

function inputsOf({ wash, made, work }: BatchRecord): Side["inputs"] {
  const { punch, degrees, milkDaysLeft } = made;
  return noted<InputName>([
    ["milk-ratio", wash && wash.milkMl / wash.punchMl],
    ["punch-strength", punch.strength],
    ["punch-sugar", punch.sugar],
    ["punch-acid", punch.acid],
    ["filters", wash?.filters],
    ["degrees-curdle", degrees.rest ?? degrees.pour],
    ["degrees-drip", degrees.drip],
    ["pour-time", work.pour?.took],
    ["rest-time", work.rest?.took],
    ["milk-days", milkDaysLeft],
  ]);
}

function resultsOf({ yielded, made, cleared, work, taste, verdict }: BatchRecord): Side["results"] {
  return noted<ResultName>([
    ["yield-share", yielded?.share],
    ["curd-kept", made.curdKept],
    ["time-to-clear", cleared?.took],
    ["passes", cleared?.passes],
    ["drip-time", work.drip?.took],
    ["clarity", taste?.means.clarity],
    ["verdict", verdict && RANK[verdict]],
  ]);
}

/** A batch as it is set beside others. */
export function sideOf(batch: BatchRecord): Side {
  const { wash } = batch;
  return {
    inputs: inputsOf(batch),
    choices: wash === undefined ? {} : { order: wash.order, shape: wash.shape, dairy: wash.dairy },
    results: resultsOf(batch),
  };
}
