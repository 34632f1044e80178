import { PROCEDURES } from "../../../core/method/procedures.ts";
import { FILTER_SHAPES } from "../../../core/spec/spec.ts";
import { Field } from "../../parts/field.tsx";
import { SelectField } from "../../parts/select-field.tsx";
import { typedLength } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { stepTitle } from "../../words/step-title.ts";
import type { FormProps } from "./form.ts";

const nameOf = (id: string): string => {
  const names: Readonly<Record<string, string>> = sayLater.spec.making.names;
  return names[id] ?? id;
};

/** Waits of the chosen procedure, each with a time of the spec's own where it has one. */
function Times({ draft, edit, faults, insist }: FormProps) {
  const words = sayLater.spec.making;
  const id = draft.washed ? "dairy-wash" : draft.procedureId;
  const waits = PROCEDURES.find((one) => one.id === id)?.steps ?? [];
  return (
    <>
      {waits.map(({ id: step, title, waitFor }) =>
        waitFor === undefined ? null : (
          <Field
            key={step}
            label={stepTitle({ id: step, title })}
            value={draft.times[step] ?? ""}
            hint={words.timeHint(typedLength(waitFor))}
            narrow
            insist={insist}
            fault={faults.get(`time-${step}`)}
            onInput={(text) => edit({ times: { ...draft.times, [step]: text } })}
          />
        ),
      )}
    </>
  );
}

/** How the drink is made, and how long its waits are. */
export function MakingForm(props: FormProps) {
  const { draft, edit } = props;
  const words = sayLater.spec.making;
  const wash = sayLater.spec.wash;
  const others = PROCEDURES.filter((one) => one.id !== "dairy-wash");
  return (
    <section class="spec-section">
      <h2>{words.title}</h2>
      {draft.washed ? (
        <SelectField
          label={wash.shape}
          choices={FILTER_SHAPES.map((value) => ({ value, label: wash.shapes[value] }))}
          value={draft.filterShape}
          hint={wash.shapeHint}
          onChange={(filterShape) => edit({ filterShape })}
        />
      ) : (
        <SelectField
          label={words.label}
          choices={[
            { value: "", label: words.usual },
            ...others.map(({ id }) => ({ value: id, label: nameOf(id) })),
          ]}
          value={draft.procedureId}
          onChange={(procedureId) => edit({ procedureId, times: {} })}
        />
      )}
      <h3>{words.times}</h3>
      <Times {...props} />
    </section>
  );
}
