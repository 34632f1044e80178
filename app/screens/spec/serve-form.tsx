import { SERVE_METHODS } from "../../../core/spec/spec.ts";
import { Field } from "../../parts/field.tsx";
import { SelectField } from "../../parts/select-field.tsx";
import { sayLater } from "../../words/say-later.ts";
import type { FormProps } from "./form.ts";

const words = sayLater.spec.serve;

/** One drink: how much, how it is chilled, in what. */
export function ServeForm({ draft, edit, faults, insist }: FormProps) {
  return (
    <section class="spec-section">
      <h2>{words.title}</h2>
      <Field
        label={words.pour}
        value={draft.pour}
        narrow
        insist={insist}
        fault={faults.get("pour")}
        onInput={(pour) => edit({ pour })}
      />
      <SelectField
        label={words.method}
        choices={SERVE_METHODS.map((value) => ({ value, label: words.methods[value] }))}
        value={draft.method}
        onChange={(method) => edit({ method })}
      />
      <Field
        label={words.dilution}
        value={draft.dilution}
        hint={words.dilutionHint}
        keyboard="decimal"
        narrow
        insist={insist}
        fault={faults.get("dilution")}
        onInput={(dilution) => edit({ dilution })}
      />
      <Field
        label={words.glass}
        value={draft.glass}
        longest={60}
        onInput={(glass) => edit({ glass })}
      />
      <Field
        label={words.garnish}
        value={draft.garnish}
        hint={words.garnishHint}
        longest={80}
        onInput={(garnish) => edit({ garnish })}
      />
      <Field
        label={words.price}
        value={draft.price}
        hint={words.priceHint}
        keyboard="decimal"
        narrow
        insist={insist}
        fault={faults.get("price")}
        onInput={(price) => edit({ price })}
      />
    </section>
  );
}

/** How long it is kept, by the house's rule, and what else is worth writing down. */
export function KeepForm({ draft, edit, faults, insist }: FormProps) {
  const { keep } = sayLater.spec;
  return (
    <section class="spec-section">
      <h2>{keep.title}</h2>
      <Field
        label={keep.days}
        value={draft.keepDays}
        keyboard="numeric"
        narrow
        insist={insist}
        fault={faults.get("keepDays")}
        onInput={(keepDays) => edit({ keepDays })}
      />
      <p class="spec-caution">{keep.caution}</p>
      <Field
        label={sayLater.spec.notes}
        value={draft.notes}
        rows={4}
        longest={2000}
        onInput={(notes) => edit({ notes })}
      />
    </section>
  );
}
