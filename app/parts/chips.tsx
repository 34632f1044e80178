import { useId, useRef } from "preact/hooks";
import { usePress } from "./use-press.ts";
import "./chips.css";

export interface Chip<Value extends string> {
  readonly value: Value;
  readonly label: string;
  readonly detail?: string | undefined;
}

export interface ChipsProps<Value extends string> {
  readonly label: string;
  readonly options: readonly Chip<Value>[];
  /** Null while nothing is chosen. */
  readonly value: Value | null;
  readonly onChange: (value: Value) => void;
  readonly disabled?: boolean | undefined;
}

const STEPS: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowDown: 1,
  ArrowLeft: -1,
  ArrowUp: -1,
};

interface OptionProps {
  readonly label: string;
  readonly detail: string | undefined;
  readonly chosen: boolean;
  /** The one that Tab reaches. */
  readonly reachable: boolean;
  readonly disabled: boolean | undefined;
  readonly onAct: () => void;
}

function Option({ label, detail, chosen, reachable, disabled, onAct }: OptionProps) {
  const { pressing, on } = usePress({ kind: "tap", subject: label, onAct, disabled });
  return (
    // biome-ignore lint/a11y/useSemanticElements: an input would take taps past the ghost filter
    <button
      type="button"
      class="chips-option"
      role="radio"
      aria-checked={chosen}
      aria-disabled={disabled === true}
      tabIndex={reachable ? 0 : -1}
      data-pressing={pressing}
      {...on}
    >
      <span class="chips-mark" aria-hidden="true" />
      <span class="chips-words">
        {label}
        {detail && <span class="chips-detail">{detail}</span>}
      </span>
    </button>
  );
}

/** One of a few: a radio group of big chips. */
export function Chips<Value extends string>(props: ChipsProps<Value>) {
  const { label, options, value, onChange, disabled } = props;
  const id = useId();
  const list = useRef<HTMLDivElement>(null);
  const chosen = options.findIndex((option) => option.value === value);
  const onKeyDown = (event: KeyboardEvent) => {
    const step = STEPS[event.key];
    const buttons = [...(list.current?.querySelectorAll("button") ?? [])];
    const focused = document.activeElement;
    const from = focused instanceof HTMLButtonElement ? buttons.indexOf(focused) : -1;
    if (step === undefined || from < 0 || disabled) return;
    event.preventDefault();
    const to = (from + step + options.length) % options.length;
    buttons[to]?.focus();
    const option = options[to];
    if (option) onChange(option.value);
  };
  return (
    <div class="chips" role="radiogroup" aria-labelledby={id} onKeyDown={onKeyDown}>
      <span class="chips-label" id={id}>
        {label}
      </span>
      <div class="chips-list" ref={list}>
        {options.map((option, index) => (
          <Option
            key={option.value}
            label={option.label}
            detail={option.detail}
            chosen={index === chosen}
            reachable={index === Math.max(chosen, 0)}
            disabled={disabled}
            onAct={() => onChange(option.value)}
          />
        ))}
      </div>
    </div>
  );
}
