import { useId } from "preact/hooks";
import "./select-field.css";

export interface Choice<Value extends string> {
  readonly value: Value;
  readonly label: string;
}

export interface SelectFieldProps<Value extends string> {
  readonly label: string;
  readonly choices: readonly Choice<Value>[];
  readonly value: Value;
  readonly onChange: (value: Value) => void;
  readonly hint?: string | undefined;
  readonly fault?: string | undefined;
}

/** One of many, by the phone's own list. */
export function SelectField<Value extends string>(props: SelectFieldProps<Value>) {
  const { label, choices, value, onChange, hint, fault } = props;
  const id = useId();
  const known = choices.some((choice) => choice.value === value);
  return (
    <div class="select-field">
      <label class="select-field-label" for={id}>
        {label}
      </label>
      <select
        id={id}
        class="select-field-entry"
        value={known ? value : ""}
        aria-invalid={fault !== undefined}
        aria-describedby={`${id}-says`}
        onChange={(event) => {
          const picked = choices.find((choice) => choice.value === event.currentTarget.value);
          if (picked) onChange(picked.value);
        }}
      >
        {!known && <option value="">–</option>}
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.label}
          </option>
        ))}
      </select>
      <p class="select-field-says" id={`${id}-says`} data-fault={fault !== undefined}>
        {fault ?? hint}
      </p>
    </div>
  );
}
