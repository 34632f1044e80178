import type { Outcome, ReadingKey } from "../method/procedure.ts";
import type { Ending } from "../run/run.ts";

/** Words of ours that stand in cells. */
export type CsvWord = Ending["how"] | ReadingKey | Outcome | "poured-back" | "seen";

/** How times and our own words are written in cells. */
export interface CsvSay {
  /** ISO 8601 with the offset of the place. */
  readonly time: (at: number) => string;
  readonly word: (word: CsvWord) => string;
  /** What a step of a run is called. */
  readonly step: (step: { readonly id: string; readonly title?: string | undefined }) => string;
}
