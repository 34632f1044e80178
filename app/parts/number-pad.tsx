import type { ComponentChildren } from "preact";
import { useId } from "preact/hooks";
import type { HoldHints } from "./hold-button.tsx";
import { HoldButton } from "./hold-button.tsx";
import type { DecimalMark, NumberKey } from "./number-entry.ts";
import { enterKey, keyFromKeyboard } from "./number-entry.ts";
import { QUIET_AFTER_KEY } from "./press-rules.ts";
import { TapButton } from "./tap-button.tsx";
import "./number-pad.css";

export interface NumberPadWords {
  /** What is being entered; names the whole pad. */
  readonly label: string;
  readonly unit: string;
  readonly erase: string;
  /** The name read out for the decimal key. */
  readonly mark: string;
  readonly done: string;
  readonly hints: HoldHints;
}

export interface NumberPadProps {
  /** What has been typed so far, as shown: "", "0.", "12.5". */
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly onDone: () => void;
  readonly words: NumberPadWords;
  readonly decimalMark?: DecimalMark;
  /** What the figure comes to, said under it while nothing is wrong. */
  readonly note?: ComponentChildren;
  /** What else can be done here, beside the label. */
  readonly aside?: ComponentChildren;
  /** Why the figure cannot be taken yet, said under it. */
  readonly fault?: string | undefined;
}

const KEYS: readonly NumberKey[] = ["1", "2", "3", "4", "5", "6", "7", "8", "9", "mark", "0"];

/** Figures without the phone's own keyboard: big keys, and a hold to take the figure. */
export function NumberPad(props: NumberPadProps) {
  const { value, onChange, onDone, words, decimalMark = ".", note, aside, fault } = props;
  const id = useId();
  const press = (key: NumberKey) => {
    const next = enterKey(value, key, decimalMark);
    if (next !== value) onChange(next);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const key = keyFromKeyboard(event.key);
    if (!key || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    press(key);
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset takes no flex layout in older Safari
    <div class="number-pad" role="group" aria-labelledby={`${id}-label`} onKeyDown={onKeyDown}>
      <div class="number-pad-head" data-aside={aside !== undefined}>
        <label class="number-pad-label" id={`${id}-label`} for={`${id}-field`}>
          {words.label}
        </label>
        {aside}
        {fault === undefined && note !== undefined && <span class="number-pad-note">{note}</span>}
        <span class="number-pad-figure">
          <input
            class="number-pad-field"
            id={`${id}-field`}
            readOnly
            inputMode="none"
            autocomplete="off"
            value={value}
            aria-describedby={`${id}-unit ${id}-fault`}
          />
          <span class="number-pad-unit" id={`${id}-unit`}>
            {words.unit}
          </span>
        </span>
        <span class="number-pad-fault" id={`${id}-fault`} role="status">
          {fault}
        </span>
        <output class="visually-hidden">{value === "" ? "" : `${value} ${words.unit}`}</output>
      </div>
      <div class="number-pad-keys">
        {KEYS.map((key) => (
          <TapButton
            key={key}
            size="key"
            quiet={QUIET_AFTER_KEY}
            name={key === "mark" ? words.mark : key}
            onAct={() => press(key)}
          >
            {key === "mark" ? decimalMark : key}
          </TapButton>
        ))}
        <TapButton quiet={QUIET_AFTER_KEY} disabled={value === ""} onAct={() => press("erase")}>
          {words.erase}
        </TapButton>
      </div>
      <HoldButton label={words.done} hints={words.hints} disabled={value === ""} onAct={onDone} />
    </div>
  );
}
