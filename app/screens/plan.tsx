import { useMemo, useState } from "preact/hooks";
import { batchCode } from "../../core/label/batch-code.ts";
import { DAIRY_WASH } from "../../core/method/dairy-wash.ts";
import { NEW_HOUSE } from "../../core/spec/house-rules.ts";
import type { Plan } from "../../core/spec/plan.ts";
import { planBatch } from "../../core/spec/plan-batch.ts";
import type { BatchSize, Spec } from "../../core/spec/spec.ts";
import { freshId, perform } from "../commands.ts";
import { cupboard } from "../pantry.ts";
import { HoldButton } from "../parts/hold-button.tsx";
import { routes } from "../routes.ts";
import { now, runs, settings, specs } from "../state.ts";
import { dayMonth } from "../words/format.ts";
import { say } from "../words/say.ts";
import { sayLater, sentence } from "../words/say-later.ts";
import { Amounts } from "./plan/amounts.tsx";
import { Balance } from "./plan/balance.tsx";
import { Curdle } from "./plan/curdle.tsx";
import { SizeChoice } from "./plan/size.tsx";
import "./plan.css";

/** The version of the app that a run is pinned to. */
const appVersion = (): string => document.documentElement.dataset.version ?? "";

function Start({ plan }: { readonly plan: Plan }) {
  const [refusal, setRefusal] = useState<string | undefined>(undefined);
  const taken = runs.value.map((run) => run.batch);
  const batch = batchCode(plan.spec.name, dayMonth(now.value), taken);
  if (plan.milk === undefined) return <p class="plan-say">{sayLater.plan.notWashed}</p>;
  const start = async () => {
    const runId = freshId();
    const started = await perform(runId, {
      type: "start-run",
      batch,
      plan,
      procedure: DAIRY_WASH,
      appVersion: appVersion(),
    });
    if (started.ok) location.hash = routes.run(runId);
    else setRefusal(sentence(started));
  };
  return (
    <div class="plan-start">
      {refusal !== undefined && (
        <p class="plan-say" role="alert">
          {refusal}
        </p>
      )}
      <HoldButton
        label={sayLater.plan.start}
        detail={sayLater.plan.startDetail(batch)}
        hints={say.work.hints}
        onAct={() => void start()}
      />
    </div>
  );
}

function Planned({ spec, size }: { readonly spec: Spec; readonly size: BatchSize }) {
  const { ounce } = settings.value;
  const shelf = cupboard.value;
  const planned = useMemo(
    () => planBatch(spec, shelf, size, { ...NEW_HOUSE, ounce }),
    [spec, shelf, size, ounce],
  );
  if (!planned.ok) {
    return (
      <div class="plan-cannot" role="alert">
        <p class="plan-strong">{sayLater.plan.cannot}</p>
        <p>{sentence(planned)}</p>
      </div>
    );
  }
  const plan = planned.value;
  return (
    <>
      <Amounts plan={plan} />
      <Curdle plan={plan} />
      <Balance plan={plan} />
      <Start plan={plan} />
    </>
  );
}

/** A batch before it starts: how much, every amount, what is predicted at each stage. */
export function PlanScreen({ id }: { readonly id: string }) {
  const spec = specs.value.find((one) => one.id === id);
  const [size, setSize] = useState<BatchSize>({ by: "serves", serves: 60 });
  if (spec === undefined) return <p class="app-say">{say.places.lost}</p>;
  return (
    <main class="plan">
      <header class="plan-head">
        <h1>{sayLater.plan.title(spec.name)}</h1>
        <a href={routes.spec(id)}>{sayLater.plan.edit}</a>
      </header>
      <SizeChoice spec={spec} size={size} onChange={setSize} />
      <Planned spec={spec} size={size} />
    </main>
  );
}
