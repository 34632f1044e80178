import { QUIET_AFTER_KEY } from "../../parts/press-rules.ts";
import { TapButton } from "../../parts/tap-button.tsx";
import { sayLater } from "../../words/say-later.ts";

export interface DialProps {
  readonly label: string;
  /** The value as it should read: "1 : 3.8". */
  readonly shown: string;
  /** A second way to say it, or what the spec has. */
  readonly detail: string;
  readonly value: number;
  /** Where the spec has it, marked on the track. */
  readonly now: number;
  readonly low: number;
  readonly high: number;
  readonly step: number;
  readonly onChange: (value: number) => void;
}

/** A value this close to a step stands on it. */
const SLIP = 1e-6;
const tidy = (value: number): number => Number(value.toPrecision(12));

const within = ({ low, high }: DialProps, value: number): number =>
  Math.min(high, Math.max(low, tidy(value)));

/** The next whole step up or down: a value between two steps goes to the nearer side first. */
function stepped(props: DialProps, by: 1 | -1): number {
  const steps = props.value / props.step;
  const next = by > 0 ? Math.floor(steps + SLIP) + 1 : Math.ceil(steps - SLIP) - 1;
  return within(props, next * props.step);
}

/** Hundredths of the way along the track. */
const placeOf = ({ low, high }: DialProps, value: number): number =>
  high > low ? (100 * (Math.min(high, Math.max(low, value)) - low)) / (high - low) : 0;

/** The track: what lies between the spec's value and this one is filled. */
function Track(props: DialProps) {
  const [now, value] = [placeOf(props, props.now), placeOf(props, props.value)];
  return (
    <svg class="plan-dial-track" viewBox="0 0 100 12" preserveAspectRatio="none" aria-hidden="true">
      <rect class="plan-dial-line" x="0" y="4" width="100" height="4" />
      <rect
        class="plan-dial-moved"
        x={Math.min(now, value)}
        y="3"
        width={Math.abs(value - now)}
        height="6"
      />
      <rect class="plan-dial-spec" x={now - 0.6} y="0" width="1.2" height="12" />
    </svg>
  );
}

/** One figure to try out: a slider for the sweep, two steps for exactness. */
export function Dial(props: DialProps) {
  const { label, shown, detail, value, low, high, step, onChange } = props;
  const words = sayLater.plan.whatIf;
  return (
    <div class="plan-dial">
      <TapButton
        size="key"
        quiet={QUIET_AFTER_KEY}
        name={words.less(label)}
        disabled={value <= low}
        onAct={() => onChange(stepped(props, -1))}
      >
        −
      </TapButton>
      <p class="plan-dial-value">
        <span class="plan-dial-label">{label}</span>
        <b>{shown}</b>
        <span class="plan-dial-label">{detail}</span>
      </p>
      <TapButton
        size="key"
        quiet={QUIET_AFTER_KEY}
        name={words.more(label)}
        disabled={value >= high}
        onAct={() => onChange(stepped(props, 1))}
      >
        +
      </TapButton>
      <div class="plan-dial-slide">
        <Track {...props} />
        <input
          class="plan-dial-range"
          type="range"
          min={low}
          max={high}
          step={step}
          value={value}
          aria-label={label}
          aria-valuetext={shown}
          onInput={(event) => onChange(within(props, Number(event.currentTarget.value)))}
        />
      </div>
    </div>
  );
}
