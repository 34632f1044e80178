import type { IngredientDraft } from "./draft.ts";
import type { ReadDraft } from "./read-draft.ts";

/** What every section of the form is handed. */
export interface FormProps {
  readonly draft: IngredientDraft;
  readonly edit: (change: Partial<IngredientDraft>) => void;
  readonly read: ReadDraft;
  readonly faults: ReadDraft["faults"];
  /** Saving was tried: every fault is shown. */
  readonly insist: boolean;
}
