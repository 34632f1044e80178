import { useMemo, useState } from "preact/hooks";
import type { DripForecast } from "../../../core/method/drip/drip-forecast.ts";
import { dripOutlook } from "../../../core/run/drip-outlook.ts";
import type { Run, Visit } from "../../../core/run/run.ts";
import { collectedSoFar } from "../../../core/run/wash-progress.ts";
import { HoldButton } from "../../parts/hold-button.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { now, settings } from "../../state.ts";
import { dueTime, percent, volume } from "../../words/format.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";
import { act } from "./act.ts";
import { AmountPad } from "./amount-pad.tsx";

interface WorkProps {
  readonly run: Run;
  readonly visit: Visit;
}

const show = (ml: number): string => volume(ml, settings.value);

function Collected({ run }: { readonly run: Run }) {
  const collected = collectedSoFar(run);
  const expected = run.plan.yield?.expected ?? 0;
  if (collected === undefined) return <p class="run-fact">{sayLater.run.noneCollected}</p>;
  const share = expected > 0 ? percent(collected / expected) : "";
  return <p class="run-fact">{sayLater.run.collectedSoFar(show(collected), share)}</p>;
}

function Forecast({ forecast, visit }: { readonly forecast: DripForecast; readonly visit: Visit }) {
  const words = sayLater.run.drip;
  const at = (ms: number) => dueTime(visit.startedAt + ms, now.value);
  const { throughAt, target, blinding } = forecast;
  return (
    <>
      <p class="run-fact run-strong">{words.through(percent(target), at(throughAt.p50))}</p>
      <p class="run-fact">{words.between(at(throughAt.p10), at(throughAt.p90))}</p>
      {blinding.verdict !== "no" && (
        <p class="run-fact run-strong">
          {words.blinding[blinding.verdict](
            show(blinding.mlPerHour),
            show(blinding.promisedMlPerHour),
          )}
        </p>
      )}
    </>
  );
}

/** When it should be through, from the readings; one reading only says when the next helps. */
function Outlook({ run, visit }: WorkProps) {
  const outlook = useMemo(() => dripOutlook(run), [run]);
  if (outlook?.type === "forecast") return <Forecast forecast={outlook} visit={visit} />;
  return <p class="run-fact">{sayLater.run.drip.none}</p>;
}

/** The slow drip: readings of what has come through, and when it will be done. */
export function DripWork({ run, visit }: WorkProps) {
  const [pad, setPad] = useState(false);
  const words = sayLater.run;
  const done = words.done[visit.step] ?? words.did;
  const log = (value: number) =>
    act(
      run.id,
      { type: "log-reading", visit: visit.key, what: "collected", value, unit: "ml" },
      words.collectedIs(show(value)),
    );
  if (pad) return <AmountPad what="collected" onTake={log} onClose={() => setPad(false)} />;
  return (
    <>
      <Collected run={run} />
      <Outlook run={run} visit={visit} />
      <div class="run-actions">
        <TapButton size="primary" onAct={() => setPad(true)}>
          {words.collected}
        </TapButton>
        <HoldButton
          label={done}
          hints={say.work.hints}
          tone="plain"
          onAct={() => void act(run.id, { type: "finish-step", visit: visit.key }, done)}
        />
      </div>
    </>
  );
}
