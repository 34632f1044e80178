import { type FiltrationLaw, filtrationLaw } from "./filtration-law.ts";

/**
 * What the punch stands in above the filter: kept topped up, a straight-sided vessel or a cone
 * filled once, or nobody said.
 */
export type VesselShape = "topped-up" | "straight" | "cone" | "unknown";

/** A law with how likely it is before anything was read. */
export interface LikelyLaw {
  readonly law: FiltrationLaw;
  readonly weight: number;
  /** Whether this is a filter that clogs. */
  readonly clogs: boolean;
}

/**
 * Heads by vessel. A cone's head falls as the cube root of what is left and its wetted wall with
 * it: n from 1/3 to 1. A known shape keeps a little room for a wrong answer. Weights by judgement.
 */
const HEADS: Readonly<Record<VesselShape, readonly (readonly [head: number, weight: number])[]>> = {
  "topped-up": [
    [0, 0.95],
    [1 / 3, 0.05],
  ],
  straight: [
    [1, 0.95],
    [2 / 3, 0.05],
  ],
  cone: [
    [1 / 3, 0.25],
    [5 / 9, 0.25],
    [7 / 9, 0.25],
    [1, 0.25],
  ],
  unknown: [
    [0, 0.25],
    [1 / 3, 0.2],
    [2 / 3, 0.25],
    [1, 0.3],
  ],
};

/** Beds: most thicken as they are laid down, some are packed by fines. Weights by judgement. */
const PACKINGS = [
  [1, 0.8],
  [1.3, 0.13],
  [1.6, 0.07],
] as const;

/** How often a filter clogs, before anything was read: judgement, no source. */
const CLOGGING = 0.06;
const CLOGS_FROM = [0.12, 0.25, 0.38, 0.5];
const CLOGS_BY = [4, 7, 11, 17];
/** A clogging filter hides its vessel: one head or two are enough. */
const CLOGGING_HEADS: Readonly<Record<VesselShape, readonly number[]>> = {
  "topped-up": [0],
  straight: [1],
  cone: [7 / 9],
  unknown: [0, 1],
};

const cloggings = CLOGS_FROM.flatMap((from) => CLOGS_BY.map((growth) => ({ from, growth })));

function* sound(head: number, likely: number): Generator<LikelyLaw> {
  for (const [packing, share] of PACKINGS) {
    const weight = likely * share * (1 - CLOGGING);
    yield { law: filtrationLaw(head, packing), weight, clogs: false };
  }
}

function* clogged(head: number, likely: number): Generator<LikelyLaw> {
  const weight = (likely * CLOGGING) / cloggings.length;
  for (const clogging of cloggings) {
    yield { law: filtrationLaw(head, 1, clogging), weight, clogs: true };
  }
}

/**
 * Laws that a vessel may follow, made one by one: whoever must not be kept waiting takes a breath
 * between them. Once made they are remembered.
 *
 * @param shape - of the vessel above the filter
 * @returns laws whose weights add up to 1
 */
export function* eachLaw(shape: VesselShape): Generator<LikelyLaw> {
  for (const [head, likely] of HEADS[shape]) yield* sound(head, likely);
  const heads = CLOGGING_HEADS[shape];
  for (const head of heads) yield* clogged(head, 1 / heads.length);
}

/**
 * Laws that a vessel may follow, with their weights.
 *
 * @param shape - of the vessel above the filter
 * @returns weights that add up to 1
 * @example
 * lawsOf("cone").length // => 28
 */
export const lawsOf = (shape: VesselShape): readonly LikelyLaw[] => [...eachLaw(shape)];
