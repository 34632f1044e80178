import type { Ounce } from "../quantity/ounce.ts";

/** Liquid the curd keeps: litres per litre of milk, with an interval that holds 8 in 10 batches. */
export interface Retention {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
  /** Where it comes from, and from how many batches. */
  readonly from: "common-practice" | "own-batches";
  readonly batches: number;
}

/** How long a slow drip takes against the usual, with an interval that holds 8 in 10. */
export interface DripLearnt {
  /** Times what is usual for its volume and filters. */
  readonly times: number;
  readonly low: number;
  readonly high: number;
  readonly batches: number;
}

/** What a house's own batches have taught of one kind of wash; what too few told of is not there. */
export interface WashLearnt {
  /** Against whole milk, whatever the dairy. */
  readonly retention?: Retention;
  readonly drip?: DripLearnt;
}

/** What a house decides once for all its batches. */
export interface HouseRules {
  readonly ounce: Ounce;
  readonly retention: Retention;
  /** Liquid a wetted filter keeps, ml each. */
  readonly perFilter: number;
  /** By kind of wash, as `washGroup` names it, and for any wash as `worldOf` does. */
  readonly learnt?: Readonly<Record<string, WashLearnt>>;
}

/**
 * Before a house has batches of its own. Curd holds 0.25 to 0.45 litres per litre of milk: an
 * estimate from printed recipes' mass balance; 20 ml per filter: common practice, no source.
 */
export const RETENTION_PRIOR: Retention = {
  mean: 0.35,
  low: 0.25,
  high: 0.45,
  from: "common-practice",
  batches: 0,
};

/** The rules of a new house. */
export const NEW_HOUSE: HouseRules = { ounce: "bar", retention: RETENTION_PRIOR, perFilter: 20 };
