/** The drinks of the invented bar, by id. */
export type DemoSpecId = `demo-${
  | "pear-beacon"
  | "boatyard-flip-side"
  | "smoked-barley"
  | "brown-butter-rye"
  | "chamomile-dry-vermouth"
  | "citrus-skin-sherbet"
  | "harbour-slush"}`;

/** What the invented bar wrote on a spec. */
export interface DemoSpecWords {
  readonly name: string;
  readonly glass: string;
  readonly garnish: string;
  readonly notes: string;
}

/** What the invented bar wrote down of its batches. */
export interface DemoHistoryWords {
  readonly failed: string;
  readonly failedNote: string;
  readonly failedTag: string;
  readonly best: readonly string[];
  readonly bestTag: string;
  readonly bestNote: string;
  readonly usual: readonly (readonly string[])[];
  readonly barley: readonly string[];
}

/** All that the invented bar wrote, in one language. */
export interface DemoWords {
  readonly specs: Readonly<Record<DemoSpecId, DemoSpecWords>>;
  readonly history: DemoHistoryWords;
}
