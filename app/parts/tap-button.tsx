import type { ComponentChildren } from "preact";
import type { Spoiled } from "./press.ts";
import { usePress } from "./use-press.ts";
import "./tap-button.css";

export interface TapButtonProps {
  readonly children: ComponentChildren;
  readonly onAct: () => void;
  readonly onSpoiled?: ((why: Spoiled) => void) | undefined;
  /** The name read out, where the children are a sign or a figure. */
  readonly name?: string | undefined;
  readonly disabled?: boolean | undefined;
  /** For a button that stays in. */
  readonly pressed?: boolean | undefined;
  readonly tone?: "plain" | "quiet";
  /** `primary` opens what a step cannot do without; `key` is for pads and steppers: square, big figure. */
  readonly size?: "primary" | "secondary" | "least" | "key";
  /** How long everything is deaf after this acts, ms; 350 unless this is one key of several. */
  readonly quiet?: number;
}

/** A reversible action: one tap, but not a drop's. */
export function TapButton(props: TapButtonProps) {
  const { children, onAct, onSpoiled, name, disabled, pressed } = props;
  const { tone = "plain", size = "secondary", quiet } = props;
  const { pressing, on } = usePress({
    kind: "tap",
    subject: name ?? (typeof children === "string" ? children : ""),
    // A page-turner's forward key acts on whatever has the focus.
    keys: ["ArrowRight"],
    onAct,
    onSpoiled,
    disabled,
    ...(quiet !== undefined && { quiet }),
  });
  return (
    <button
      type="button"
      class="tap-button"
      data-tone={tone}
      data-size={size}
      data-pressing={pressing}
      aria-label={name}
      aria-disabled={disabled === true}
      aria-pressed={pressed}
      {...on}
    >
      {children}
    </button>
  );
}
