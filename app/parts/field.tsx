import type { TargetedInputEvent } from "preact";
import { useId, useState } from "preact/hooks";
import { unturned } from "../../core/quantity/unturned.ts";
import "./field.css";

export interface FieldProps {
  readonly label: string;
  readonly value: string;
  readonly onInput: (value: string) => void;
  /** What is wrong with it and what to do; shown once the field was left, or at once if `insist`. */
  readonly fault?: string | undefined;
  readonly insist?: boolean | undefined;
  /** A sentence that helps; a fault takes its place. */
  readonly hint?: string | undefined;
  readonly keyboard?: "text" | "decimal" | "numeric" | "search";
  /** A short figure rather than words. */
  readonly narrow?: boolean;
  /** More than one line of text. */
  readonly rows?: number | undefined;
  readonly longest?: number | undefined;
  readonly onEnter?: (() => void) | undefined;
}

type Typed = TargetedInputEvent<HTMLInputElement | HTMLTextAreaElement>;

/** Something to type: label above, what was typed, a sentence under it. Nothing typed is ever lost. */
export function Field(props: FieldProps) {
  const { label, value, onInput, onEnter, keyboard = "text", rows } = props;
  const id = useId();
  const [left, setLeft] = useState(false);
  const fault = left || props.insist ? props.fault : undefined;
  const common = {
    id,
    class: "field-entry",
    value,
    ...(props.longest !== undefined && { maxLength: props.longest }),
    "aria-invalid": fault !== undefined,
    "aria-describedby": `${id}-says`,
    onBlur: () => setLeft(true),
    // What is typed or pasted is taken in here, whatever it is for.
    onInput: ({ currentTarget }: Typed) => {
      const text = unturned(currentTarget.value);
      if (text !== currentTarget.value) currentTarget.value = text;
      onInput(text);
    },
  };
  return (
    <div class="field" data-narrow={props.narrow === true}>
      <label class="field-label" for={id}>
        {label}
      </label>
      {rows === undefined ? (
        <input
          {...common}
          type="text"
          inputMode={keyboard}
          autocomplete="off"
          autocapitalize={keyboard === "text" ? "sentences" : "off"}
          enterkeyhint={onEnter ? "done" : "next"}
          onKeyDown={(event) => {
            if (event.key !== "Enter" || event.isComposing) return;
            setLeft(true);
            onEnter?.();
          }}
        />
      ) : (
        <textarea {...common} rows={rows} />
      )}
      <p class="field-says" id={`${id}-says`} data-fault={fault !== undefined} aria-live="polite">
        {fault ?? props.hint}
      </p>
    </div>
  );
}
