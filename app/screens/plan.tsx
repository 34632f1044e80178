import { useMemo } from "preact/hooks";
import type { Result } from "../../core/quantity/result.ts";
import { type Lots, type LotsRefusal, lotsFor } from "../../core/spec/lots.ts";
import type { Plan } from "../../core/spec/plan.ts";
import { planBatch } from "../../core/spec/plan-batch.ts";
import { type RoundedPlan, roundedPlan } from "../../core/spec/rounded-plan.ts";
import type { Spec } from "../../core/spec/spec.ts";
import { realChanges, withChanges } from "../../core/spec/what-if.ts";
import { batchName } from "../ahead/batch-name.ts";
import { house, shelf, tools } from "../house.ts";
import { LinkButton } from "../parts/link-button.tsx";
import { TapButton } from "../parts/tap-button.tsx";
import { routes } from "../routes.ts";
import { settings, specs } from "../state.ts";
import { inOneLine } from "../words/joined.ts";
import { say } from "../words/say.ts";
import { sayLater } from "../words/say-later.ts";
import { Balance } from "./plan/balance.tsx";
import { Care } from "./plan/care.tsx";
import { changesText } from "./plan/changes-text.ts";
import { Cold } from "./plan/cold.tsx";
import { Cost } from "./plan/cost.tsx";
import { Curdle } from "./plan/curdle.tsx";
import { Fit, Makes } from "./plan/fit.tsx";
import { deskOf, type PlanDesk, setDesk, setTrial, trialOf } from "./plan/kept.ts";
import { Through } from "./plan/learnt.tsx";
import type { Made } from "./plan/made.ts";
import { Measure } from "./plan/measure.tsx";
import { Pull } from "./plan/pull.tsx";
import { Ready } from "./plan/ready.tsx";
import { Refusal } from "./plan/refusal.tsx";
import { isTyped, SizeChoice } from "./plan/size.tsx";
import { Start } from "./plan/start.tsx";
import { WhatIf } from "./plan/what-if.tsx";
import "./plan.css";

interface PlannedProps {
  /** As it stands in the book. */
  readonly spec: Spec;
  readonly desk: PlanDesk;
}

interface MadeUp {
  readonly made: Made;
  readonly lots: Result<Lots, LotsRefusal>;
  readonly rounded: RoundedPlan | undefined;
}

/** The batch as it is to be made: in lots where it has to be, in amounts that can be measured. */
function useMade(plan: Plan, choice: PlanDesk["lots"]): MadeUp {
  const { vessel } = settings.value;
  const [rules, with_] = [house.value, tools.value];
  const lots = useMemo(() => lotsFor(plan, vessel, rules), [plan, vessel, rules]);
  const split = lots.ok && choice === "one" ? lots.value : { count: 1, plan };
  const exact = split.plan;
  const rounded = useMemo(() => {
    const found = with_ && roundedPlan(exact, with_, rules);
    return found?.ok ? found.value : undefined;
  }, [exact, with_, rules]);
  return { made: { lots: split.count, exact, plan: rounded?.plan ?? exact }, lots, rounded };
}

/** Apart, since it follows every move of a slider: whether what is tried is in the batch. */
function StartOf({ spec, desk, made }: PlannedProps & { readonly made: Made }) {
  const tried = realChanges(spec, desk.size, trialOf(spec.id));
  const pending = JSON.stringify(tried) !== JSON.stringify(desk.used);
  const changes = changesText(spec, desk.used);
  return <Start plan={made.plan} lots={made.lots} changes={changes} pending={pending} />;
}

function Whole({ spec, desk, plan }: PlannedProps & { readonly plan: Plan }) {
  const { made, lots, rounded } = useMade(plan, desk.lots);
  const current = desk.typed === desk.size;
  const { id } = spec;
  return (
    <>
      <Makes plan={plan} />
      <Fit specId={id} plan={plan} lots={lots} choice={desk.lots} />
      <Curdle specId={id} plan={made.plan} />
      <Balance specId={id} plan={made.plan} />
      <Through plan={plan} />
      <p class="plan-fit">
        <a href={routes.services(id)}>{sayLater.compare.services.link}</a>
      </p>
      <WhatIf spec={spec} size={desk.size} used={desk.used} />
      <Measure specId={id} made={made} change={rounded?.change} />
      <Pull specId={id} plan={made.plan} lots={made.lots} />
      <Cost specId={id} plan={made.plan} lots={made.lots} />
      <Ready specId={id} plan={made.plan} changes={changesText(spec, desk.used)} />
      <Cold specId={id} plan={made.plan} />
      <Care specId={id} plan={made.plan} />
      {current ? (
        <StartOf spec={spec} desk={desk} made={made} />
      ) : (
        <p class="plan-say">{sayLater.plan.cannot}</p>
      )}
    </>
  );
}

function Planned({ spec, desk }: PlannedProps) {
  const { size, used } = desk;
  const [cupboard, rules] = [shelf.value, house.value];
  const changed = useMemo(() => withChanges(spec, used), [spec, used]);
  const planned = useMemo(
    () => planBatch(changed, cupboard, size, rules),
    [changed, cupboard, size, rules],
  );
  if (planned.ok) return <Whole spec={spec} desk={desk} plan={planned.value} />;
  return (
    <Refusal
      title={sayLater.plan.cannot}
      refusal={planned}
      spec={changed}
      size={size}
      onTopUp={(topUp) => {
        setDesk(spec.id, { used: { ...used, topUp } });
        setTrial(spec.id, { ...trialOf(spec.id), topUp });
      }}
    />
  );
}

/** Says that the batch is not as its spec stands, and the way back. */
function Otherwise({ spec, desk }: PlannedProps) {
  const changes = changesText(spec, desk.used);
  if (changes.length === 0) return null;
  const { whatIf } = sayLater.plan;
  return (
    <div class="plan-say" role="status">
      <p>{whatIf.banner(inOneLine(changes))}</p>
      <TapButton
        size="least"
        onAct={() => {
          setDesk(spec.id, { used: {} });
          setTrial(spec.id, {});
        }}
      >
        {whatIf.back}
      </TapButton>
    </div>
  );
}

/** Apart, since it follows the clock. */
const BatchName = ({ of }: { readonly of: string }) => (
  <span>{sayLater.plan.batch(batchName(of))}</span>
);

function Screen({ spec }: { readonly spec: Spec }) {
  const { id } = spec;
  const kept = deskOf(id);
  // What has become part of the spec meanwhile is no change any more.
  const used = useMemo(() => realChanges(spec, kept.size, kept.used), [spec, kept.size, kept.used]);
  const desk = { ...kept, used };
  return (
    <main class="plan">
      <LinkButton tone="quiet" href={routes.specs}>
        {sayLater.spec.toSpecs}
      </LinkButton>
      <header class="plan-head">
        <h1>{sayLater.plan.title(spec.name)}</h1>
        <BatchName of={spec.name} />
        <a href={routes.spec(id)}>{sayLater.plan.edit}</a>
      </header>
      <SizeChoice
        spec={spec}
        size={desk.typed}
        onChange={(typed) => setDesk(id, isTyped(typed) ? { typed, size: typed } : { typed })}
      />
      <Otherwise spec={spec} desk={desk} />
      <Planned spec={spec} desk={desk} />
    </main>
  );
}

/** A batch before it starts: how much, every amount, what is predicted, and what else could be. */
export function PlanScreen({ id }: { readonly id: string }) {
  const spec = specs.value.find((one) => one.id === id);
  return spec === undefined ? <p class="app-say">{say.places.lost}</p> : <Screen spec={spec} />;
}
