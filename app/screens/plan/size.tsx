import { useState } from "preact/hooks";
import type { BatchSize, Spec } from "../../../core/spec/spec.ts";
import { cupboard } from "../../pantry.ts";
import { Field } from "../../parts/field.tsx";
import { SelectField } from "../../parts/select-field.tsx";
import { typedNumber } from "../../parts/typed-number.ts";
import { sayLater } from "../../words/say-later.ts";

interface SizeProps {
  readonly spec: Spec;
  readonly size: BatchSize;
  readonly onChange: (size: BatchSize) => void;
}

type Stock = Extract<BatchSize, { by: "stock" }>;

/** All of an ingredient: ml, or g for what is weighed. */
function stockOf(ingredientId: string, value: number): Stock {
  const weighed = cupboard.value.get(ingredientId)?.kind === "dry";
  return { by: "stock", ingredientId, amount: { value, unit: weighed ? "g" : "ml" } };
}

function startOf(by: BatchSize["by"], spec: Spec): BatchSize {
  switch (by) {
    case "serves":
      return { by, serves: 60 };
    case "bottles":
      return { by, bottles: 6, size: 700 };
    case "volume":
      return { by, volume: 5000 };
    case "vessel":
      return { by, vessel: 10_000 };
    case "stock":
      return stockOf(spec.lines[0]?.ingredientId ?? "", 700);
  }
}

const SENSIBLE = { low: 1, high: 100_000 };

/** Whether every figure of a size was typed: what is typed and is none stands in it as NaN. */
export function isTyped(size: BatchSize): boolean {
  switch (size.by) {
    case "serves":
      return Number.isFinite(size.serves);
    case "bottles":
      return Number.isFinite(size.bottles) && Number.isFinite(size.size);
    case "volume":
      return Number.isFinite(size.volume);
    case "vessel":
      return Number.isFinite(size.vessel);
    case "stock":
      return Number.isFinite(size.amount.value);
  }
}

/** A figure of the size. */
function Count(props: {
  readonly label: string;
  readonly value: number;
  readonly onChange: (value: number) => void;
}) {
  const { label, value, onChange } = props;
  const [text, setText] = useState(String(value));
  // A size that was set elsewhere takes the place of what stands here; the same one does not.
  const elsewhere = Number.isFinite(value) && typedNumber(text, SENSIBLE) !== value;
  const typed = elsewhere ? String(value) : text;
  const read = typedNumber(typed, SENSIBLE);
  return (
    <Field
      label={label}
      value={typed}
      keyboard="decimal"
      insist
      fault={read === undefined ? sayLater.plan.typed(SENSIBLE.low, SENSIBLE.high) : undefined}
      onInput={(text) => {
        setText(text);
        onChange(typedNumber(text, SENSIBLE) ?? Number.NaN);
      }}
    />
  );
}

/** What a spec uses, each once: its lines and its milk. */
function stockChoices(spec: Spec) {
  const milk = spec.wash === undefined ? [] : [spec.wash.dairyId];
  const ids = new Set([...spec.lines.map((line) => line.ingredientId), ...milk]);
  return [...ids].map((id) => ({ value: id, label: cupboard.value.get(id)?.name ?? id }));
}

function OnHand(props: {
  readonly spec: Spec;
  readonly size: Stock;
  readonly onChange: (size: BatchSize) => void;
}) {
  const { spec, size, onChange } = props;
  const { value, unit } = size.amount;
  return (
    <>
      <SelectField
        label={sayLater.plan.stock}
        choices={stockChoices(spec)}
        value={size.ingredientId}
        onChange={(id) => onChange(stockOf(id, value))}
      />
      <Count
        label={sayLater.plan.onHand(unit)}
        value={value}
        onChange={(amount) => onChange(stockOf(size.ingredientId, amount))}
      />
    </>
  );
}

function Fields({ spec, size, onChange }: SizeProps) {
  const words = sayLater.plan;
  switch (size.by) {
    case "serves":
      return (
        <Count
          label={words.serves}
          value={size.serves}
          onChange={(serves) => onChange({ by: "serves", serves })}
        />
      );
    case "bottles":
      return (
        <>
          <Count
            label={words.bottles}
            value={size.bottles}
            onChange={(bottles) => onChange({ ...size, bottles })}
          />
          <Count
            label={words.bottleSize}
            value={size.size}
            onChange={(ml) => onChange({ ...size, size: ml })}
          />
        </>
      );
    case "volume":
      return (
        <Count
          label={words.finalVolume}
          value={size.volume}
          onChange={(volume) => onChange({ by: "volume", volume })}
        />
      );
    case "vessel":
      return (
        <Count
          label={words.vesselVolume}
          value={size.vessel}
          onChange={(vessel) => onChange({ by: "vessel", vessel })}
        />
      );
    case "stock":
      return <OnHand spec={spec} size={size} onChange={onChange} />;
  }
}

const WAYS = ["serves", "bottles", "volume", "vessel", "stock"] as const;

/** How big the batch is to be. */
export function SizeChoice({ spec, size, onChange }: SizeProps) {
  const words = sayLater.plan;
  return (
    <section class="plan-size">
      <SelectField
        label={words.size}
        value={size.by}
        choices={WAYS.map((value) => ({ value, label: words.by[value] }))}
        onChange={(by) => onChange(startOf(by, spec))}
      />
      <Fields key={size.by} spec={spec} size={size} onChange={onChange} />
    </section>
  );
}
