import { useId } from "preact/hooks";
import { QUIET_AFTER_KEY } from "./press-rules.ts";
import { TapButton } from "./tap-button.tsx";
import "./stepper.css";

export interface StepperProps {
  readonly label: string;
  /** The value as it should read: "4.5 L". */
  readonly shown: string;
  readonly onLess: () => void;
  readonly onMore: () => void;
  /** The names read out for the two buttons. */
  readonly lessName: string;
  readonly moreName: string;
  readonly atLeast?: boolean | undefined;
  readonly atMost?: boolean | undefined;
}

/** One step down, the value, one step up. */
export function Stepper(props: StepperProps) {
  const id = useId();
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset takes no grid layout in older Safari
    <div class="stepper" role="group" aria-labelledby={id}>
      <span class="stepper-label" id={id}>
        {props.label}
      </span>
      <TapButton
        size="key"
        quiet={QUIET_AFTER_KEY}
        name={props.lessName}
        disabled={props.atLeast}
        onAct={props.onLess}
      >
        −
      </TapButton>
      <output class="stepper-value">{props.shown}</output>
      <TapButton
        size="key"
        quiet={QUIET_AFTER_KEY}
        name={props.moreName}
        disabled={props.atMost}
        onAct={props.onMore}
      >
        +
      </TapButton>
    </div>
  );
}
