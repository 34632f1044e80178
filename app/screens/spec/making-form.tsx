import { FILTER_SHAPES } from "../../../core/spec/spec.ts";
import { Field } from "../../parts/field.tsx";
import { LinkButton } from "../../parts/link-button.tsx";
import { SelectField } from "../../parts/select-field.tsx";
import { chosenProcedure, misfitOf, proceduresFor } from "../../procedure-book.ts";
import { routes } from "../../routes.ts";
import { procedureName } from "../../words/procedure-name.ts";
import { sayLater } from "../../words/say-later.ts";
import { stepTitle } from "../../words/step-title.ts";
import { typedLength } from "../../words/written.ts";
import type { FormProps } from "./form.ts";

/** Waits of the chosen procedure, each with a time of the spec's own where it has one. */
function Times({ draft, edit, faults, insist }: FormProps) {
  const words = sayLater.spec.making;
  const waits = chosenProcedure(draft.washed, draft.procedureId)?.steps ?? [];
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

/** Which procedure it is made by. */
function Which({ draft, edit, faults }: FormProps) {
  const words = sayLater.spec.making;
  const { washed, procedureId } = draft;
  const choices = proceduresFor(washed).map((one) => ({
    value: one.id,
    label: procedureName(one),
  }));
  const misfit = misfitOf(washed, procedureId);
  return (
    <SelectField
      label={words.label}
      hint={misfit && words.otherKind[washed ? "washed" : "unwashed"]}
      fault={faults.get("procedure")}
      choices={washed ? choices : [{ value: "", label: words.usual }, ...choices]}
      value={misfit === "gone" ? procedureId : (chosenProcedure(washed, procedureId)?.id ?? "")}
      onChange={(next) => edit({ procedureId: next, times: {} })}
    />
  );
}

/** How the drink is made, and how long its waits are. */
export function MakingForm(props: FormProps) {
  const { draft, edit } = props;
  const words = sayLater.spec.making;
  const wash = sayLater.spec.wash;
  return (
    <section class="spec-section">
      <h2>{words.title}</h2>
      <Which {...props} />
      {draft.washed && (
        <SelectField
          label={wash.shape}
          choices={FILTER_SHAPES.map((value) => ({ value, label: wash.shapes[value] }))}
          value={draft.filterShape}
          hint={wash.shapeHint}
          onChange={(filterShape) => edit({ filterShape })}
        />
      )}
      <LinkButton href={routes.procedures}>{words.toProcedures}</LinkButton>
      <h3>{words.times}</h3>
      <Times {...props} />
    </section>
  );
}
