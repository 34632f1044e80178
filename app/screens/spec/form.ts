import type { SpecDraft } from "./draft.ts";
import type { Faults } from "./read-draft.ts";

/** What every section of the form is handed. */
export interface FormProps {
  readonly draft: SpecDraft;
  readonly edit: (change: Partial<SpecDraft>) => void;
  readonly faults: Faults;
  /** Saving was tried: every fault is shown. */
  readonly insist: boolean;
}
