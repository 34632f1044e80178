import { useState } from "preact/hooks";
import { useByOf } from "../../../core/label/use-by.ts";
import { volumeOf } from "../../../core/liquid/liquid.ts";
import { actualFinal } from "../../../core/run/actual.ts";
import type { Run, Visit } from "../../../core/run/run.ts";
import { Chips } from "../../parts/chips.tsx";
import { HoldButton } from "../../parts/hold-button.tsx";
import { Stepper } from "../../parts/stepper.tsx";
import { settings } from "../../state.ts";
import { day, volume } from "../../words/format.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";
import { act } from "./act.ts";
import { bottleSizes } from "./bottle-sizes.ts";

interface WorkProps {
  readonly run: Run;
  readonly visit: Visit;
}

const show = (ml: number): string => volume(ml, settings.value);

/** As many as it takes to hold so much: at least one. */
const countFor = (ml: number, size: number): number => Math.max(1, Math.ceil(ml / size));

/** Bottling: how many of which size, and until when by the house's rule. */
export function BottleWork({ run, visit }: WorkProps) {
  const there = volumeOf(actualFinal(run));
  const { sizes, first } = bottleSizes(run.plan.size);
  const [size, setSize] = useState(first);
  const [count, setCount] = useState(countFor(there, first));
  const [days, setDays] = useState(run.plan.spec.keepDays);
  const words = sayLater.run.bottle;
  const useBy = useByOf(run.startedAt, days);
  const finish = () =>
    act(
      run.id,
      {
        type: "finish-step",
        visit: visit.key,
        answer: { of: "bottled", bottles: [{ count, size }], useBy },
      },
      words.done(count),
    );
  return (
    <>
      <Chips
        label={words.size}
        options={sizes.map((one) => ({ value: String(one), label: show(one) }))}
        value={String(size)}
        onChange={(next) => {
          setSize(Number(next));
          setCount(countFor(there, Number(next)));
        }}
      />
      <Stepper
        label={words.count}
        shown={String(count)}
        lessName={words.fewer}
        moreName={words.more}
        atLeast={count <= 1}
        onLess={() => setCount((n) => Math.max(1, n - 1))}
        onMore={() => setCount((n) => n + 1)}
      />
      <p class="run-fact">{words.total(show(count * size), show(there))}</p>
      <Stepper
        label={words.useBy}
        shown={day(useBy)}
        lessName={words.earlier}
        moreName={words.later}
        atLeast={days <= 1}
        // A later date than the house's rule is never offered.
        atMost={days >= run.plan.spec.keepDays}
        onLess={() => setDays((n) => Math.max(1, n - 1))}
        onMore={() => setDays((n) => Math.min(run.plan.spec.keepDays, n + 1))}
      />
      <p class="run-note">{words.useByNote}</p>
      <div class="run-actions">
        <HoldButton label={words.done(count)} hints={say.work.hints} onAct={finish} />
      </div>
    </>
  );
}
