import type { BatchSize } from "../../../core/spec/spec.ts";
import { sayLater } from "../../words/say-later.ts";
import { sizeText } from "./changes-text.ts";
import { Dial } from "./dial.tsx";
import type { DialsProps } from "./dials.tsx";

const words = sayLater.plan.whatIf;

/** The number of a size that a dial moves. */
function amountOf(size: BatchSize): number {
  switch (size.by) {
    case "serves":
      return size.serves;
    case "bottles":
      return size.bottles;
    case "volume":
      return size.volume;
    case "vessel":
      return size.vessel;
    case "stock":
      return size.amount.value;
  }
}

function withAmount(size: BatchSize, value: number): BatchSize {
  switch (size.by) {
    case "serves":
      return { ...size, serves: value };
    case "bottles":
      return { ...size, bottles: value };
    case "volume":
      return { ...size, volume: value };
    case "vessel":
      return { ...size, vessel: value };
    case "stock":
      return { ...size, amount: { ...size.amount, value } };
  }
}

/** Steps that a person would take. */
const SIZE_STEPS: Readonly<Record<BatchSize["by"], number>> = {
  serves: 1,
  bottles: 1,
  volume: 100,
  vessel: 100,
  stock: 10,
};

/** How big the batch is. */
export function SizeDial({ size, tried, onTry }: DialsProps) {
  const step = SIZE_STEPS[size.by];
  const now = amountOf(size);
  const then = tried.size?.by === size.by ? tried.size : size;
  return (
    <Dial
      label={sayLater.plan.by[size.by]}
      shown={sizeText(then)}
      detail={words.spec(sizeText(size))}
      value={amountOf(then)}
      now={now}
      low={Math.min(step, now)}
      high={Math.max(2 * now, 10 * step)}
      step={step}
      onChange={(to) => onTry({ ...tried, size: withAmount(size, to) })}
    />
  );
}
