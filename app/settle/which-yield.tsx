import { useState } from "preact/hooks";
import type { Run } from "../../core/run/run.ts";
import { differingYields } from "../../core/run/yield-conflict.ts";
import { noted } from "../noted.ts";
import { HoldButton } from "../parts/hold-button.tsx";
import { Why } from "../parts/why.tsx";
import { settings } from "../state.ts";
import { clockTime, volume } from "../words/format.ts";
import { say } from "../words/say.ts";
import { sayLater } from "../words/say-later.ts";
import "./which-yield.css";

/** Two phones measured different yields: which one counts? Nothing where there is no question. */
export function WhichYield({ run }: { readonly run: Run }) {
  const [fault, setFault] = useState<string | undefined>(undefined);
  const differing = differingYields(run);
  if (differing.length === 0) return null;
  const words = sayLater.batch.which;
  const show = (ml: number) => volume(ml, settings.value);
  const settle = async (ml: number) =>
    setFault(await noted(run.id, { type: "settle-yield", ml }, words.settled(show(ml))));
  return (
    <section class="which-yield" role="alert">
      <h2>{words.title}</h2>
      <p>{words.why}</p>
      <Why of="whichYield" />
      {differing.map(({ ml, at }) => (
        <HoldButton
          key={ml}
          label={words.counts(show(ml))}
          detail={words.measured(clockTime(at))}
          hints={say.work.hints}
          tone="plain"
          size="secondary"
          onAct={() => void settle(ml)}
        />
      ))}
      {fault !== undefined && <p class="which-yield-fault">{fault}</p>}
    </section>
  );
}
