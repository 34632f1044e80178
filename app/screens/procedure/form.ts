import type { Step } from "../../../core/method/procedure.ts";
import type { ProcedureDraft } from "../../procedure-drafts.ts";

/** What every part of a step's form is handed. */
export interface StepFormProps {
  readonly draft: ProcedureDraft;
  readonly step: Step;
  readonly faults: ReadonlyMap<string, string>;
  /** Saving was tried: every fault is shown. */
  readonly insist: boolean;
  readonly onText: (field: string, text: string) => void;
  readonly onChange: (change: { [Name in keyof Step]?: Step[Name] | undefined }) => void;
}
