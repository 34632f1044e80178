import { useState } from "preact/hooks";
import { type Run, stepOfVisit, type Visit } from "../../../core/run/run.ts";
import { HoldButton } from "../../parts/hold-button.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { settings } from "../../state.ts";
import { volume } from "../../words/format.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";
import { act } from "./act.ts";
import { AmountPad } from "./amount-pad.tsx";

interface WorkProps {
  readonly run: Run;
  readonly visit: Visit;
}

/** A step that cannot be finished without a measured volume. */
export function MeasureWork({ run, visit }: WorkProps) {
  const [pad, setPad] = useState(false);
  const { needs } = stepOfVisit(run, visit);
  if (needs !== "milk" && needs !== "cloudy-run" && needs !== "yield") return null;
  const take = (ml: number) =>
    act(
      run.id,
      { type: "finish-step", visit: visit.key, answer: { of: needs, ml } },
      `${sayLater.run.pads[needs]}: ${volume(ml, settings.value)}`,
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
