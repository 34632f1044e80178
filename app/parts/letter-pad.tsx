import { useId } from "preact/hooks";
import type { HoldHints } from "./hold-button.tsx";
import { HoldButton } from "./hold-button.tsx";
import { QUIET_AFTER_KEY } from "./press-rules.ts";
import { TapButton } from "./tap-button.tsx";
import "./letter-pad.css";

export interface LetterPadProps {
  /** What has been typed so far. */
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly onDone: () => void;
  /** Letters that fit. */
  readonly longest: number;
  readonly words: {
    /** What is being entered; names the whole pad. */
    readonly label: string;
    readonly erase: string;
    readonly done: string;
    readonly hints: HoldHints;
  };
}

const LETTERS = [..."ABCDEFGHIJKLMNOPQRSTUVWXYZ"];

/** A few letters without the phone's own keyboard, and a hold to take them. */
export function LetterPad({ value, onChange, onDone, longest, words }: LetterPadProps) {
  const id = useId();
  const press = (letter: string) => {
    if (value.length < longest) onChange(value + letter);
  };
  const erase = () => onChange(value.slice(0, -1));
  const onKeyDown = (event: KeyboardEvent) => {
    const letter = event.key.toUpperCase();
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === "Backspace") erase();
    else if (LETTERS.includes(letter)) press(letter);
    else return;
    event.preventDefault();
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset takes no flex layout in older Safari
    <div class="letter-pad" role="group" aria-labelledby={id} onKeyDown={onKeyDown}>
      <span class="letter-pad-label" id={id}>
        {words.label}
      </span>
      <output class="letter-pad-typed">{value}</output>
      <div class="letter-pad-keys">
        {LETTERS.map((letter) => (
          <TapButton
            key={letter}
            size="least"
            quiet={QUIET_AFTER_KEY}
            disabled={value.length >= longest}
            onAct={() => press(letter)}
          >
            {letter}
          </TapButton>
        ))}
        <TapButton size="least" quiet={QUIET_AFTER_KEY} disabled={value === ""} onAct={erase}>
          {words.erase}
        </TapButton>
      </div>
      <HoldButton label={words.done} hints={words.hints} disabled={value === ""} onAct={onDone} />
    </div>
  );
}
