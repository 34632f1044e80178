import { checkProcedure, type ProcedureWarning } from "../../../core/method/check-procedure.ts";
import { changeStep } from "../../../core/method/edit-procedure.ts";
import type { Procedure, Step } from "../../../core/method/procedure.ts";
import type { ProcedureDraft } from "../../procedure-drafts.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";
import { stepTitle } from "../../words/step-title.ts";
import { lengthIn } from "../../words/typed-in.ts";
import { typedLength } from "../../words/written.ts";

/** Fields of a step that hold a length of time. */
export type TimeName = "waitFor" | "askEvery" | "longestFor" | "handsFor";

/** A form that was read. */
export interface ReadProcedure {
  /** Where nothing is wrong with it. */
  readonly procedure?: Procedure;
  /** A sentence by `name` or `step/field`; what belongs to a whole step is under `step/`. */
  readonly faults: ReadonlyMap<string, string>;
  readonly warnings: readonly ProcedureWarning[];
}

/** Whether the catalogue has a word for a step, so that it needs none of its own. */
export const hasWord = (id: string): boolean => say.work.verbs[id] !== undefined;

/** What a step is called in the form; one that is still to be named says so. */
export const nameOfStep = (step: Step): string =>
  (step.title ?? "").trim() === "" && !hasWord(step.id)
    ? sayLater.procedure.newTitle
    : stepTitle(step);

const TIMES: readonly TimeName[] = ["waitFor", "askEvery", "longestFor", "handsFor"];

/** What a time's field shows. */
export function timeText({ texts }: ProcedureDraft, step: Step, field: TimeName): string {
  const ms = step[field];
  return texts[`${step.id}/${field}`] ?? (ms === undefined ? "" : typedLength(ms));
}

/** What the field of the further asks shows. */
export const askAtText = ({ texts }: ProcedureDraft, step: Step): string =>
  texts[`${step.id}/askAt`] ?? (step.askAt ?? []).map(typedLength).join(", ");

/** Reads one time; a fault where it is none. */
function readTime(
  draft: ProcedureDraft,
  step: Step,
  field: TimeName,
  faults: Map<string, string>,
): number | undefined {
  const text = timeText(draft, step, field).trim();
  if (text === "") return undefined;
  const ms = lengthIn(text);
  if (ms === undefined) faults.set(`${step.id}/${field}`, sayLater.procedure.timeFault);
  return ms ?? step[field];
}

function readAskAt(
  draft: ProcedureDraft,
  step: Step,
  faults: Map<string, string>,
): number[] | undefined {
  const texts = askAtText(draft, step)
    // "1,5 h" holds a decimal comma.
    .split(/;|(?<!\d),|,(?!\d)/u)
    .map((text) => text.trim())
    .filter((text) => text !== "");
  const read = texts.flatMap((text) => lengthIn(text) ?? []);
  if (read.length < texts.length) {
    faults.set(`${step.id}/askAt`, sayLater.procedure.timesFault);
    return step.askAt;
  }
  return read.length === 0 ? undefined : read;
}

/** The field that a fault of a step stands under. */
const FIELD_OF: Readonly<Record<string, string>> = {
  "no-title": "title",
  "wait-without-time": "waitFor",
  "asks-out-of-order": "askAt",
  "stop-before-ask": "longestFor",
  "reading-without-figure": "needs",
};

/** Reads the form: the procedure as it would be saved, or what is wrong with it and where. */
export function readDraft(draft: ProcedureDraft, version: number): ReadProcedure {
  const faults = new Map<string, string>();
  let procedure: Procedure = { ...draft.procedure, version };
  for (const step of draft.procedure.steps) {
    const times = TIMES.map((field) => [field, readTime(draft, step, field, faults)] as const);
    const askAt = readAskAt(draft, step, faults);
    procedure = changeStep(procedure, step.id, { ...Object.fromEntries(times), askAt });
  }
  const { faults: found, warnings } = checkProcedure(procedure, hasWord);
  for (const fault of found) {
    const key = "step" in fault ? `${fault.step}/${FIELD_OF[fault.fault] ?? ""}` : "name";
    if (!faults.has(key)) faults.set(key, sayLater.procedure.faults[fault.fault]);
  }
  return faults.size === 0 ? { procedure, faults, warnings } : { faults, warnings };
}
