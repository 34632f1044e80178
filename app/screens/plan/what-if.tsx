import { useMemo, useState } from "preact/hooks";
import type { Result } from "../../../core/quantity/result.ts";
import type { PlanRefusal } from "../../../core/spec/plan-batch.ts";
import type { BatchSize, Spec } from "../../../core/spec/spec.ts";
import { type Changes, realChanges, withChanges } from "../../../core/spec/what-if.ts";
import { saveSpecs, tell } from "../../commands.ts";
import { house, shelf } from "../../house.ts";
import { TapButton } from "../../parts/tap-button.tsx";
import { decimals } from "../../words/format.ts";
import { inOneLine } from "../../words/joined.ts";
import { sayLater, sentence } from "../../words/say-later.ts";
import { changesText, sizeText } from "./changes-text.ts";
import { Compare } from "./compare.tsx";
import {
  type DialsProps,
  firstHeld,
  HeldChoice,
  HeldDial,
  MilkDial,
  TopUpChoice,
  TopUpDial,
} from "./dials.tsx";
import { deskOf, setDesk, setTrial, trialOf } from "./kept.ts";
import { predict } from "./predict.ts";
import { Refusal } from "./refusal.tsx";
import { Section } from "./section.tsx";
import { SizeDial } from "./size-dial.tsx";

const words = sayLater.plan.whatIf;
const NAME = "what-if";
const TABS = ["milk", "held", "topUp", "size"] as const;
type Tab = (typeof TABS)[number];

interface WhatIfProps {
  /** As it stands in the book. */
  readonly spec: Spec;
  readonly size: BatchSize;
  /** What the batch does otherwise. */
  readonly used: Changes;
}

interface TabsProps {
  readonly washed: boolean;
  readonly tab: Tab;
  readonly onTab: (tab: Tab) => void;
}

function Tabs({ washed, tab, onTab }: TabsProps) {
  if (!washed) return null;
  return (
    <div class="plan-tabs">
      {TABS.map((one) => (
        <TapButton key={one} size="least" pressed={one === tab} onAct={() => onTab(one)}>
          {words.tabs[one]}
        </TapButton>
      ))}
    </div>
  );
}

interface TabProps extends DialsProps {
  readonly tab: Tab;
  readonly which: string;
}

/** What is chosen before the dial is moved. */
function Choice({ tab, onWhich, ...props }: TabProps & { onWhich: (which: string) => void }) {
  if (tab === "held") return <HeldChoice {...props} onWhich={onWhich} />;
  return tab === "topUp" ? <TopUpChoice {...props} /> : null;
}

function OneDial({ tab, ...props }: TabProps) {
  switch (tab) {
    case "milk":
      return <MilkDial {...props} />;
    case "held":
      return <HeldDial {...props} />;
    case "topUp":
      return <TopUpDial {...props} />;
    case "size":
      return <SizeDial {...props} />;
  }
}

interface ActionsProps extends WhatIfProps {
  readonly tried: Changes;
  /** It differs from the spec, or from the batch. */
  readonly moved: boolean;
  readonly fits: boolean;
}

function Actions({ spec, size, used, tried, moved, fits }: ActionsProps) {
  const [fault, setFault] = useState<string | undefined>(undefined);
  const { size: triedSize, ...rest } = realChanges(spec, size, tried);
  const inUse = JSON.stringify(used) === JSON.stringify(rest) && triedSize === undefined;
  const use = () => {
    const next = triedSize ?? size;
    setDesk(spec.id, { used: rest, size: next, typed: next });
    setTrial(spec.id, rest);
  };
  const keep = async () => {
    const next = { ...withChanges(spec, rest), version: spec.version + 1 };
    const saved = await saveSpecs([next]);
    setFault(saved.ok ? undefined : sentence(saved));
    if (!saved.ok) return;
    setDesk(spec.id, { used: {} });
    setTrial(spec.id, triedSize === undefined ? {} : { size: triedSize });
    tell(words.kept(decimals(next.version, 0)));
  };
  const reset = () => {
    setDesk(spec.id, { used: {} });
    setTrial(spec.id, {});
  };
  const nothing = Object.keys(rest).length === 0;
  return (
    <>
      <div class="plan-acts">
        <TapButton size="least" disabled={inUse || !fits} onAct={use}>
          {inUse && !nothing ? words.inUse : words.use}
        </TapButton>
        {spec.wash !== undefined && (
          <TapButton size="least" disabled={nothing || !fits} onAct={() => void keep()}>
            {words.keep}
          </TapButton>
        )}
        <TapButton size="least" disabled={!moved} onAct={reset}>
          {words.reset}
        </TapButton>
      </div>
      {fault !== undefined && (
        <p class="plan-say" role="alert">
          {fault}
        </p>
      )}
    </>
  );
}

/** The columns' names, in sight while the rows go by under them. */
const Heads = () => (
  <p class="plan-heads" aria-hidden="true">
    <span />
    <span>{words.now}</span>
    <span>{words.tried}</span>
    <span>{words.change}</span>
  </p>
);

const predicted = <Value,>(result: Result<Value, PlanRefusal>): Value | undefined =>
  result.ok ? result.value : undefined;

function Body({ spec, size, used }: WhatIfProps) {
  const tried = trialOf(spec.id);
  const [tab, setTab] = useState<Tab>(spec.wash === undefined ? "size" : "milk");
  const [which, setWhich] = useState(() => firstHeld(spec));
  const [cupboard, rules] = [shelf.value, house.value];
  const now = useMemo(() => predict(spec, size), [spec, size, cupboard, rules]);
  const real = realChanges(spec, size, tried);
  const moved = Object.keys(real).length > 0;
  const then = moved ? predict(withChanges(spec, real), real.size ?? size) : now;
  const onTry = (next: Changes) => setTrial(spec.id, realChanges(spec, size, next));
  const dials = { spec, size, tried, onTry };
  return (
    <>
      <Tabs washed={spec.wash !== undefined} tab={tab} onTab={setTab} />
      <Choice {...dials} tab={tab} which={which} onWhich={setWhich} />
      <div class="plan-stick">
        <OneDial {...dials} tab={tab} which={which} />
        {then.ok ? (
          <Heads />
        ) : (
          <Refusal
            title={words.thenRefused}
            refusal={then}
            spec={withChanges(spec, real)}
            size={real.size ?? size}
            onTopUp={(topUp) => onTry({ ...tried, topUp })}
          />
        )}
      </div>
      <Actions spec={spec} size={size} used={used} tried={tried} moved={moved} fits={then.ok} />
      {!now.ok && moved && <p>{`${words.nowRefused} ${sentence(now)}`}</p>}
      <Compare now={predicted(now)} then={predicted(then)} />
    </>
  );
}

/** What is tried, in words; the size is none of the spec's. */
function triedText({ spec, size }: WhatIfProps): string {
  const { size: triedSize, ...rest } = realChanges(spec, size, trialOf(spec.id));
  const sized = triedSize === undefined ? [] : [words.size(sizeText(triedSize))];
  return inOneLine([...changesText(spec, rest), ...sized]);
}

/** Other figures tried out beside the spec, live. */
export function WhatIf(props: WhatIfProps) {
  const { id } = props.spec;
  // While it is open its own numbers say it, and the row need not follow every move of a slider.
  const tried = deskOf(id).open.includes(NAME) ? "" : triedText(props);
  return (
    <Section specId={id} name={NAME} title={words.title} says={tried === "" ? words.none : tried}>
      {() => <Body {...props} />}
    </Section>
  );
}
