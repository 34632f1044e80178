import { useState } from "preact/hooks";
import { type Run, stepOfVisit, type Visit } from "../../../core/run/run.ts";
import { collectedSoFar } from "../../../core/run/wash-progress.ts";
import { HoldButton } from "../../parts/hold-button.tsx";
import { LinkButton } from "../../parts/link-button.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { routes } from "../../routes.ts";
import { now, settings } from "../../state.ts";
import { percent, volume } from "../../words/format.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";
import { act } from "./act.ts";
import { AmountPad } from "./amount-pad.tsx";

interface WorkProps {
  readonly run: Run;
  readonly visit: Visit;
}

const finish = (run: Run, visit: Visit, done: string) =>
  act(run.id, { type: "finish-step", visit: visit.key }, done);

/** A step that is simply done. */
export function HandsWork({ run, visit }: WorkProps) {
  const done = sayLater.run.done[visit.step] ?? sayLater.run.did;
  return (
    <div class="run-actions">
      {stepOfVisit(run, visit).work === "label" && (
        <LinkButton href={routes.label(run.id)}>{sayLater.run.seeLabel}</LinkButton>
      )}
      <HoldButton label={done} hints={say.work.hints} onAct={() => finish(run, visit, done)} />
    </div>
  );
}

function Collected({ run }: { readonly run: Run }) {
  const collected = collectedSoFar(run);
  const expected = run.plan.yield?.expected ?? 0;
  if (collected === undefined) return <p class="run-fact">{sayLater.run.noneCollected}</p>;
  const share = expected > 0 ? percent(collected / expected) : "";
  return (
    <p class="run-fact">{sayLater.run.collectedSoFar(volume(collected, settings.value), share)}</p>
  );
}

/** A wait: it can be ended at any time, and a slow drip takes readings meanwhile. */
export function WaitWork({ run, visit }: WorkProps) {
  const [pad, setPad] = useState(false);
  const step = stepOfVisit(run, visit);
  const over = step.kind === "watched-wait" || (visit.dueAt ?? 0) <= now.value;
  const done =
    (over ? sayLater.run.done[visit.step] : sayLater.run.done.curdleEarly) ?? sayLater.run.did;
  const log = (value: number) =>
    act(
      run.id,
      { type: "log-reading", visit: visit.key, what: "collected", value, unit: "ml" },
      sayLater.run.collectedIs(volume(value, settings.value)),
    );
  if (pad) return <AmountPad what="collected" onTake={log} onClose={() => setPad(false)} />;
  return (
    <>
      {step.work === "drip" && <Collected run={run} />}
      <div class="run-actions">
        {step.work === "drip" && (
          <TapButton size="primary" onAct={() => setPad(true)}>
            {sayLater.run.collected}
          </TapButton>
        )}
        <HoldButton
          label={done}
          hints={say.work.hints}
          tone={over && step.work !== "drip" ? "main" : "plain"}
          onAct={() => finish(run, visit, done)}
        />
      </div>
    </>
  );
}
