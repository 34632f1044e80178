import { useState } from "preact/hooks";
import { type Run, stepOfVisit, type Visit } from "../../../core/run/run.ts";
import { HoldButton } from "../../parts/hold-button.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { settings } from "../../state.ts";
import { decimals, volume } from "../../words/format.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";
import { act } from "./act.ts";
import { AmountPad } from "./amount-pad.tsx";

interface WorkProps {
  readonly run: Run;
  readonly visit: Visit;
}

type Measured = "milk" | "cloudy-run" | "yield" | "brix";

const isMeasured = (needs: string | undefined): needs is Measured =>
  needs === "milk" || needs === "cloudy-run" || needs === "yield" || needs === "brix";

const shown = (needs: Measured, value: number): string =>
  needs === "brix" ? `${decimals(value, 1)} °Bx` : volume(value, settings.value);

/** A step that cannot be finished without a figure. */
export function MeasureWork({ run, visit }: WorkProps) {
  const [pad, setPad] = useState(false);
  const { needs } = stepOfVisit(run, visit);
  if (!isMeasured(needs)) return null;
  const take = (value: number) =>
    act(
      run.id,
      {
        type: "finish-step",
        visit: visit.key,
        answer: needs === "brix" ? { of: needs, brix: value } : { of: needs, ml: value },
      },
      `${sayLater.run.pads[needs]}: ${shown(needs, value)}`,
    );
  if (pad) return <AmountPad what={needs} onTake={take} onClose={() => setPad(false)} />;
  const planned = needs === "milk" ? run.plan.milk?.ml : undefined;
  return (
    <div class="run-actions">
      {planned === undefined ? (
        <TapButton size="primary" onAct={() => setPad(true)}>
          {sayLater.run.typeAmount}
        </TapButton>
      ) : (
        <>
          <TapButton onAct={() => setPad(true)}>{sayLater.run.otherAmount}</TapButton>
          <HoldButton
            label={sayLater.run.asPlanned(volume(planned, settings.value))}
            hints={say.work.hints}
            onAct={() => take(planned)}
          />
        </>
      )}
    </div>
  );
}
