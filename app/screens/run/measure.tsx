import { useState } from "preact/hooks";
import type { ReadingKey } from "../../../core/method/procedure.ts";
import type { Answer } from "../../../core/run/answer.ts";
import { type Run, roundOf, stepOfVisit, type Visit } from "../../../core/run/run.ts";
import { type Weighable, weigh } from "../../../core/run/weigh.ts";
import { HoldButton } from "../../parts/hold-button.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { settings } from "../../state.ts";
import { isWet } from "../../wet-hands.ts";
import { degreesRead } from "../../words/degrees.ts";
import { decimals, volume } from "../../words/format.ts";
import { named } from "../../words/joined.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";
import { withUnit } from "../../words/with-unit.ts";
import { act } from "./act.ts";
import { AmountPad } from "./amount-pad.tsx";
import { CloudySoFar } from "./pass.tsx";
import type { Scale } from "./weight-pad.tsx";

interface WorkProps {
  readonly run: Run;
  readonly visit: Visit;
}

/** What is typed as one figure; bottles are counted and spirit is poured on screens of their own. */
type Measured = Exclude<ReadingKey, "top-up" | "bottled">;

const isMeasured = (needs: ReadingKey | undefined): needs is Measured =>
  needs !== undefined && needs !== "top-up" && needs !== "bottled";

type Weighed = Extract<Weighable, "cloudy-run" | "yield">;

/** Milk is measured before there is a batch to weigh; what drips is weighed while it drips. */
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

/** Read off an instrument, it is a figure; out of a jug, an amount. */
const isAmount = (needs: Measured): boolean => needs !== "brix" && needs !== "temperature";

function shown(needs: Measured, value: number): string {
  switch (needs) {
    case "brix":
      return withUnit(decimals(value, 1), "°Bx");
    case "temperature":
      return degreesRead(value);
    default:
      return volume(value, settings.value);
  }
}

/** A figure as the answer to what a step asks for. */
function answerOf(needs: Measured, value: number): Answer {
  switch (needs) {
    case "brix":
      return { of: needs, brix: value };
    case "temperature":
      return { of: needs, degC: value };
    default:
      return { of: needs, ml: value };
  }
}

/** Who pours back again has read how the first time; with wet hands the one target stays. */
const opensAtOnce = (needs: ReadingKey | undefined, visit: Visit): boolean =>
  needs === "cloudy-run" && roundOf(visit) > 1 && !isWet.peek();

/** A step that cannot be finished without a figure. */
export function MeasureWork({ run, visit }: WorkProps) {
  const { needs } = stepOfVisit(run, visit);
  const [pad, setPad] = useState(opensAtOnce(needs, visit));
  if (!isMeasured(needs)) return null;
  const give = (answer: Answer, value: number) =>
    act(
      run.id,
      { type: "finish-step", visit: visit.key, answer },
      named(sayLater.run.pads[needs], shown(needs, value)),
    );
  const take = (value: number) => give(answerOf(needs, value), value);
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
            {isAmount(needs) ? sayLater.run.typeAmount : sayLater.run.typeFigure}
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
