import { useId } from "preact/hooks";
import "./time-field.css";

export interface TimeFieldProps {
  readonly label: string;
  /** `HH:MM`, or `YYYY-MM-DD` for a date; empty for none. */
  readonly value: string;
  readonly kind?: "time" | "date";
  /** Hears of whole times and dates, and of none where one was cleared. */
  readonly onChange: (value: string) => void;
}

/** A time of day or a date, chosen on the phone's own wheel. */
export function TimeField({ label, value, kind = "time", onChange }: TimeFieldProps) {
  const id = useId();
  return (
    <div class="time-field">
      <label for={id}>{label}</label>
      <input
        id={id}
        type={kind}
        value={value}
        onInput={(event) => {
          const next = event.currentTarget.value;
          // A time half typed is no time yet: the old one holds.
          if (next !== "" || kind === "date") onChange(next);
        }}
      />
    </div>
  );
}
