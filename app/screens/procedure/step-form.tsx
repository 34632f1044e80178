import {
  isWait,
  READING_KEYS,
  type ReadingKey,
  STANDS,
  type Step,
} from "../../../core/method/procedure.ts";
import { Field } from "../../parts/field.tsx";
import { SelectField } from "../../parts/select-field.tsx";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";
import { askAtText, type TimeName, timeText } from "./draft.ts";
import type { StepFormProps } from "./form.ts";
import { UsesForm } from "./uses-form.tsx";
import { WaysForm } from "./ways-form.tsx";

const words = sayLater.procedure;

/** How the run screen lays out what is read. */
const WORK_OF: Readonly<Record<ReadingKey, Step["work"]>> = {
  milk: "milk",
  "cloudy-run": "re-pour",
  collected: "drip",
  yield: "yield",
  "top-up": "top-up",
  bottled: "bottle",
  temperature: "other",
  brix: "brix",
};

/** What can be read at a step of its own; what is collected is read while it drips. */
const READABLE = READING_KEYS.filter((key) => key !== "collected");

function Time(props: StepFormProps & { readonly field: TimeName; readonly label: string }) {
  const { draft, step, field, label, faults, insist, onText } = props;
  return (
    <Field
      label={label}
      value={timeText(draft, step, field)}
      hint={field === "handsFor" ? words.handsHint : words.optional}
      narrow
      insist={insist}
      fault={faults.get(`${step.id}/${field}`)}
      onInput={(text) => onText(field, text)}
    />
  );
}

function Times(props: StepFormProps) {
  const { draft, step, faults, insist, onText } = props;
  if (!isWait(step)) {
    return <Time {...props} field="handsFor" label={words.handsFor} />;
  }
  const watched = step.kind === "watched-wait";
  return (
    <>
      <Time {...props} field="waitFor" label={watched ? words.firstAsk : words.waitFor} />
      {watched && (
        <Field
          label={words.askAt}
          value={askAtText(draft, step)}
          hint={words.askAtHint}
          insist={insist}
          fault={faults.get(`${step.id}/askAt`)}
          onInput={(text) => onText("askAt", text)}
        />
      )}
      <Time {...props} field="askEvery" label={words.askEvery} />
      {watched && <Time {...props} field="longestFor" label={words.longestFor} />}
    </>
  );
}

/** Everything about one step that a house may change. */
export function StepForm(props: StepFormProps) {
  const { step, faults, insist, onChange } = props;
  const usual = say.work.verbs[step.id];
  return (
    <div class="procedure-form">
      <Field
        label={words.title}
        value={step.title ?? ""}
        longest={80}
        insist={insist}
        hint={usual === undefined ? words.titleNone : words.titleHint(usual)}
        fault={faults.get(`${step.id}/title`)}
        onInput={(title) => onChange({ title: title === "" ? undefined : title })}
      />
      <Field
        label={words.detail}
        value={step.detail ?? ""}
        longest={500}
        rows={2}
        hint={words.detailHint}
        onInput={(detail) => onChange({ detail: detail === "" ? undefined : detail })}
      />
      {step.kind === "reading" && (
        <SelectField
          label={words.needs}
          choices={READABLE.map((value) => ({ value, label: words.readings[value] }))}
          value={step.needs ?? "temperature"}
          fault={faults.get(`${step.id}/needs`)}
          onChange={(needs) => onChange({ needs, work: WORK_OF[needs] })}
        />
      )}
      <Times {...props} />
      <SelectField
        label={words.stands}
        choices={(["", ...STANDS] as const).map((value) => ({
          value,
          label: words.standing[value],
        }))}
        value={step.stands ?? ""}
        onChange={(stands) => onChange({ stands: stands === "" ? undefined : stands })}
      />
      <UsesForm {...props} />
      <WaysForm {...props} />
    </div>
  );
}
