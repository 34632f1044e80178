import { useId, useState } from "preact/hooks";
import type { Spoiled } from "./press.ts";
import { usePress } from "./use-press.ts";
import "./hold-button.css";

export interface HoldHints {
  /** At rest: says that this is a hold. All three are part of the name, as they are of what shows. */
  readonly rest: string;
  /** After a contact that was let go too early. */
  readonly short: string;
  /** After a second contact or a wide one: the glass is wet. */
  readonly wet: string;
}

export interface HoldButtonProps {
  readonly label: string;
  /** A second line: what the action will note or change. */
  readonly detail?: string | undefined;
  readonly hints: HoldHints;
  readonly onAct: () => void;
  /** Hears of contacts that came to nothing. */
  readonly onSpoiled?: ((why: Spoiled) => void) | undefined;
  readonly disabled?: boolean | undefined;
  /** `signal` only for what is due now. */
  readonly tone?: "main" | "plain" | "signal";
  /** `half` is the whole lower half of the screen. */
  readonly size?: "primary" | "secondary" | "half";
}

function hintFor(why: Spoiled | null, hints: HoldHints): string {
  switch (why) {
    case "let-go":
    case "too-short":
    case "moved-off":
      return hints.short;
    case "another-contact":
    case "wide":
      return hints.wet;
    case "too-soon":
    case "edge":
    case "lost":
    case null:
      return hints.rest;
  }
}

/** A consequential action: held while it fills, longer with wet hands, or asked for by key or by ear. */
export function HoldButton(props: HoldButtonProps) {
  const { label, detail, hints, disabled, tone = "main", size = "primary" } = props;
  const id = useId();
  const [spoiled, setSpoiled] = useState<Spoiled | null>(null);
  const { pressing, on } = usePress({
    kind: "hold",
    subject: label,
    disabled,
    onAct: () => {
      setSpoiled(null);
      props.onAct();
    },
    onSpoiled: (why) => {
      setSpoiled(why);
      props.onSpoiled?.(why);
    },
  });
  return (
    <button
      type="button"
      class="hold-button"
      data-tone={tone}
      data-size={size}
      data-pressing={pressing}
      aria-labelledby={`${id}-label ${id}-detail ${id}-hint`}
      aria-disabled={disabled === true}
      {...on}
    >
      <span class="hold-button-fill" aria-hidden="true" />
      <span class="hold-button-label" id={`${id}-label`}>
        {label}
      </span>
      <span class="hold-button-detail" id={`${id}-detail`}>
        {detail}
      </span>
      <span class="hold-button-hint" id={`${id}-hint`}>
        {hintFor(pressing ? null : spoiled, hints)}
      </span>
    </button>
  );
}
