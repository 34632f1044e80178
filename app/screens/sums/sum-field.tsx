import { Field } from "../../parts/field.tsx";
import type { ReadSum } from "./read-sum.ts";

interface SumFieldProps {
  readonly read: ReadSum;
  /** Of its sentence among the faults. */
  readonly of: string;
  readonly label: string;
  readonly value: string;
  readonly onInput: (value: string) => void;
  readonly hint?: string | undefined;
  /** It may be below zero: some phones' number keys have no minus. */
  readonly signed?: boolean;
}

/** A figure of a sum. */
export function SumField(props: SumFieldProps) {
  const { read, of, label, value, onInput, hint, signed = false } = props;
  return (
    <Field
      label={label}
      value={value}
      keyboard={signed ? "text" : "decimal"}
      hint={hint}
      fault={read.faults.get(of)}
      onInput={onInput}
    />
  );
}
