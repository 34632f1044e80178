import { useState } from "preact/hooks";
import type { Answer } from "../../../core/run/answer.ts";
import { type Run, stepOfVisit, type Visit } from "../../../core/run/run.ts";
import { type Weighable, weigh } from "../../../core/run/weigh.ts";
import { HoldButton } from "../../parts/hold-button.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { settings } from "../../state.ts";
import { decimals, volume } from "../../words/format.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";
import { act } from "./act.ts";
import { AmountPad } from "./amount-pad.tsx";
import { CloudySoFar } from "./pass.tsx";
import type { Scale } from "./weight-pad.tsx";

interface WorkProps {
  readonly run: Run;
  readonly visit: Visit;
}

type Measured = "milk" | "cloudy-run" | "yield" | "brix";

const isMeasured = (needs: string | undefined): needs is Measured =>
  needs === "milk" || needs === "cloudy-run" || needs === "yield" || needs === "brix";

type Weighed = Extract<Measured, Weighable>;

/** Milk is measured before there is a batch to weigh; a refractometer weighs nothing. */
const isWeighed = (needs: Measured): needs is Weighed =>
  needs === "cloudy-run" || needs === "yield";

/** The same answer off a scale. */
const scaleFor = (
  run: Run,
  what: Weighed,
  give: (answer: Answer, ml: number) => Promise<string | undefined>,
): Scale => ({
  run,
  what,
  onWeigh: (gross) => {
    const weight = weigh(run, what, gross);
    return give({ of: what, gross }, weight.ok ? weight.value.ml : 0);
  },
});

const shown = (needs: Measured, value: number): string =>
  needs === "brix" ? `${decimals(value, 1)} °Bx` : volume(value, settings.value);

/** A step that cannot be finished without a figure. */
export function MeasureWork({ run, visit }: WorkProps) {
  const [pad, setPad] = useState(false);
  const { needs } = stepOfVisit(run, visit);
  if (!isMeasured(needs)) return null;
  const give = (answer: Answer, value: number) =>
    act(
      run.id,
      { type: "finish-step", visit: visit.key, answer },
      `${sayLater.run.pads[needs]}: ${shown(needs, value)}`,
    );
  const take = (value: number) =>
    give(needs === "brix" ? { of: needs, brix: value } : { of: needs, ml: value }, value);
  if (pad) {
    const scale = isWeighed(needs) ? scaleFor(run, needs, give) : undefined;
    return <AmountPad what={needs} onTake={take} scale={scale} onClose={() => setPad(false)} />;
  }
  const planned = needs === "milk" ? run.plan.milk?.ml : undefined;
  return (
    <>
      {needs === "cloudy-run" && <CloudySoFar run={run} />}
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
    </>
  );
}
