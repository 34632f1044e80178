import { useState } from "preact/hooks";
import { MASS_STEPS, VOLUME_STEPS } from "../../../core/quantity/rounding.ts";
import { saveSettings } from "../../commands.ts";
import { Chips } from "../../parts/chips.tsx";
import { Field } from "../../parts/field.tsx";
import { typedNumber } from "../../parts/typed-number.ts";
import { settings } from "../../state.ts";
import { typed } from "../../words/format.ts";
import { degreeUnit, volumeUnit } from "../../words/house-units.ts";
import { sayLater, sentence } from "../../words/say-later.ts";

/** Saves a choice; what could not be saved is said beside it. */
export function useChoice() {
  const [fault, setFault] = useState<string | undefined>(undefined);
  const choose = async (change: Parameters<typeof saveSettings>[0]) => {
    const saved = await saveSettings(change);
    setFault(saved.ok ? undefined : sentence(saved));
  };
  return { fault, choose };
}

/** What could not be saved, said beside it. */
export function Fault({ fault }: { readonly fault: string | undefined }) {
  if (fault === undefined) return null;
  return (
    <p class="kit-fault" role="alert">
      {fault}
    </p>
  );
}

/** Which units volumes and temperatures are shown in, and which ounce the house pours. */
export function Units() {
  const { fault, choose } = useChoice();
  const { volumes, degrees, ounce } = settings.value;
  const words = sayLater.kit.units;
  const phones = { value: "auto", label: words.auto } as const;
  return (
    <section class="part">
      <h2>{words.title}</h2>
      <Chips
        label={words.volumes}
        options={[
          { ...phones, detail: words[volumeUnit("auto")] },
          { value: "ml", label: words.ml },
          { value: "oz", label: words.oz },
        ]}
        value={volumes}
        onChange={(next) => void choose({ volumes: next })}
      />
      <Chips
        label={words.degrees}
        options={[
          { ...phones, detail: words[degreeUnit("auto")] },
          { value: "C", label: words.C },
          { value: "F", label: words.F },
        ]}
        value={degrees}
        onChange={(next) => void choose({ degrees: next })}
      />
      <Chips
        label={words.ounce}
        options={[
          { value: "bar", label: words.bar, detail: words.barDetail },
          { value: "exact", label: words.exact, detail: words.exactDetail },
        ]}
        value={ounce}
        onChange={(next) => void choose({ ounce: next })}
      />
      <p class="soft">{words.note}</p>
      <Fault fault={fault} />
    </section>
  );
}

interface FigureChoiceProps {
  readonly label: string;
  readonly steps: readonly number[];
  readonly named: (step: string) => string;
  readonly value: number;
  readonly onChange: (step: number) => void;
}

/** One of a few figures. */
function FigureChoice({ label, steps, named, value, onChange }: FigureChoiceProps) {
  return (
    <Chips
      label={label}
      options={steps.map((step) => ({ value: String(step), label: named(typed(step)) }))}
      value={String(value)}
      onChange={(next) => onChange(Number(next))}
    />
  );
}

interface TypedProps {
  readonly label: string;
  readonly hint: string;
  readonly fault: string;
  readonly start: string;
  /** Saves what makes sense; answers whether it did. */
  readonly onType: (text: string) => boolean;
}

/** Something typed that is saved as soon as it makes sense; until then the old one holds. */
export function Typed({ label, hint, fault, start, onType }: TypedProps) {
  const [text, setText] = useState(start);
  const [wrong, setWrong] = useState(false);
  return (
    <Field
      label={label}
      value={text}
      hint={hint}
      fault={wrong ? fault : undefined}
      insist
      narrow
      onInput={(next) => {
        setText(next);
        setWrong(!onType(next));
      }}
    />
  );
}

const VESSEL = { low: 100, high: 1_000_000, units: ["ml"] };
const LONGEST_SIGN = 4;

/** What the house measures with, its largest vessel, its money. */
export function Tools() {
  const { fault, choose } = useChoice();
  const { jiggerStep, scaleStep, vessel, currency } = settings.value;
  const words = sayLater.kit.tools;
  const step = <Step extends number>(steps: readonly Step[], next: number): Step | undefined =>
    steps.find((one) => one === next);
  return (
    <section class="part">
      <h2>{words.title}</h2>
      <p class="soft">{words.why}</p>
      <FigureChoice
        label={words.jigger}
        steps={VOLUME_STEPS}
        named={words.ml}
        value={jiggerStep}
        onChange={(next) => void choose({ jiggerStep: step(VOLUME_STEPS, next) ?? jiggerStep })}
      />
      <FigureChoice
        label={words.scale}
        steps={MASS_STEPS}
        named={words.g}
        value={scaleStep}
        onChange={(next) => void choose({ scaleStep: step(MASS_STEPS, next) ?? scaleStep })}
      />
      <Typed
        label={words.vessel}
        hint={words.vesselHint}
        fault={words.vesselFault}
        start={typed(vessel)}
        onType={(text) => {
          const next = typedNumber(text, VESSEL);
          if (next !== undefined) void choose({ vessel: next });
          return next !== undefined;
        }}
      />
      <Typed
        label={words.currency}
        hint={words.currencyHint}
        fault={words.currencyFault}
        start={currency}
        onType={(text) => {
          const fits = text.trim().length <= LONGEST_SIGN;
          if (fits) void choose({ currency: text.trim() });
          return fits;
        }}
      />
      <Fault fault={fault} />
    </section>
  );
}

/** Dark, light, or as the phone is set. */
export function Theme() {
  const { fault, choose } = useChoice();
  const words = sayLater.kit.theme;
  return (
    <section class="part">
      <h2>{words.title}</h2>
      <Chips
        label={words.label}
        options={[
          { value: "auto", label: words.auto },
          { value: "dark", label: words.dark },
          { value: "light", label: words.light },
        ]}
        value={settings.value.theme}
        onChange={(next) => void choose({ theme: next })}
      />
      <Fault fault={fault} />
    </section>
  );
}
