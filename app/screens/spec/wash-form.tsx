import { type Written, writtenAmounts } from "../../../core/spec/batch-amounts.ts";
import type { Spec } from "../../../core/spec/spec.ts";
import { cupboard } from "../../pantry.ts";
import { Chips } from "../../parts/chips.tsx";
import { Field } from "../../parts/field.tsx";
import { SelectField } from "../../parts/select-field.tsx";
import { typedNumber } from "../../parts/typed-number.ts";
import { settings } from "../../state.ts";
import { volume } from "../../words/format.ts";
import { inOneLine } from "../../words/joined.ts";
import { sayLater } from "../../words/say-later.ts";
import type { FormProps } from "./form.ts";
import { readRatio } from "./read-draft.ts";

const words = sayLater.spec.wash;
const ORDERS = ["punch-into-milk", "milk-into-punch"] as const;
const RULES = ["proportion", "strength", "fixed"] as const;

function milkFor(spec: Spec | undefined): Written | undefined {
  const written = spec && writtenAmounts(spec, cupboard.value, settings.value.ounce);
  return written?.ok ? written.value : undefined;
}

function Ratio({
  draft,
  edit,
  faults,
  insist,
  spec,
}: FormProps & { readonly spec: Spec | undefined }) {
  const ratio = readRatio(draft.ratio);
  const written = milkFor(spec);
  const hints = [
    ...(ratio ? [words.ratioHint(volume(ratio * 1000, settings.value))] : []),
    ...(written ? [words.asWritten(volume(written.milk, settings.value))] : []),
  ];
  return (
    <Field
      label={words.ratio}
      value={draft.ratio}
      hint={inOneLine(hints)}
      insist={insist}
      fault={faults.get("ratio")}
      onInput={(to) => edit({ ratio: to })}
    />
  );
}

function Dairy({ draft, edit, faults, insist }: FormProps) {
  const milks = [...cupboard.value.values()].filter((one) => one.dairy !== undefined);
  const allergens = cupboard.value.get(draft.dairyId)?.allergens ?? [];
  const named = allergens.map((one) => sayLater.ingredient.allergen[one]);
  return (
    <SelectField
      label={words.dairy}
      choices={milks.map((one) => ({ value: one.id, label: one.name }))}
      value={draft.dairyId}
      hint={words.dairyNote(named.join(", ") || sayLater.ingredient.noAllergens)}
      fault={insist ? faults.get("dairy") : undefined}
      onChange={(dairyId) => edit({ dairyId })}
    />
  );
}

/** Whether and how the drink is washed. */
export function WashForm(props: FormProps & { readonly spec: Spec | undefined }) {
  const { draft, edit, faults, insist } = props;
  return (
    <section class="spec-section">
      <h2>{words.title}</h2>
      <Chips
        label={words.label}
        options={[
          { value: "yes", label: words.yes },
          { value: "no", label: words.no },
        ]}
        value={draft.washed ? "yes" : "no"}
        onChange={(to) => edit({ washed: to === "yes" })}
      />
      {draft.washed && (
        <>
          <Dairy {...props} />
          <Ratio {...props} />
          <Chips
            label={words.order}
            options={ORDERS.map((value) => ({
              value,
              label: words.orders[value],
              detail: words.orderDetail[value],
            }))}
            value={draft.order}
            onChange={(order) => edit({ order })}
          />
          <Field
            label={words.filters}
            value={draft.filters}
            hint={words.filtersHint}
            keyboard="numeric"
            narrow
            insist={insist}
            fault={faults.get("filters")}
            onInput={(filters) => edit({ filters })}
          />
        </>
      )}
    </section>
  );
}

/** How the held-back spirit follows the measured yield. */
export function TopUpForm({ draft, edit, faults, insist }: FormProps) {
  const { topUp } = sayLater.spec;
  const isHeld = ({ held }: { readonly held: string }) =>
    (typedNumber(held, { low: 0, high: 100, units: ["%"] }) ?? 0) > 0;
  return (
    <section class="spec-section">
      <h2>{topUp.title}</h2>
      {!draft.lines.some(isHeld) && <p>{topUp.nothingHeld}</p>}
      <Chips
        label={topUp.label}
        options={RULES.map((value) => ({
          value,
          label: topUp.rules[value],
          detail: topUp.detail[value],
        }))}
        value={draft.rule}
        onChange={(rule) => edit({ rule })}
      />
      {draft.rule === "strength" && (
        <Field
          label={topUp.target}
          value={draft.target}
          keyboard="decimal"
          narrow
          insist={insist}
          fault={faults.get("target")}
          onInput={(target) => edit({ target })}
        />
      )}
    </section>
  );
}
