import type { answers } from "./answers.ts";
import type { kit } from "./en/kit.ts";
import type { RuleText } from "./rule-text.ts";
import type { say } from "./say.ts";
import type { refusalWords, sayLater } from "./say-later.ts";
import type { Spoken } from "./spoken.ts";

/** A table for a spreadsheet has the same heads and words everywhere: machines may read it. */
type ForMachines = "batchHeads" | "readingHeads" | "words";

/** What Kit says in another language. */
export type KitWords = Spoken<Omit<typeof kit, "table">> & {
  readonly table: Spoken<Omit<(typeof kit)["table"], ForMachines>>;
};

/** All that a language says: what is missing does not compile. */
export interface Complete extends Readonly<Record<string, object>> {
  readonly say: typeof say;
  readonly sayLater: Omit<typeof sayLater, "kit"> & { readonly kit: KitWords };
  /** What the questions beside steps and figures are answered with. */
  readonly answers: typeof answers;
  readonly refusals: typeof refusalWords;
  /** What the cupboard of a new house is called, by id. */
  readonly ingredientNames: Readonly<Record<string, string>>;
  /** How figures are worked out, by the rule's key. */
  readonly ruleTexts: Readonly<Record<string, RuleText>>;
}
