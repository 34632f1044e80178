import { useState } from "preact/hooks";
import type { Planned } from "../../../core/board/planned.ts";
import type { Run } from "../../../core/run/run.ts";
import { startPlanned } from "../../ahead/begin.ts";
import { MomentFields, useMoment } from "../../ahead/moment.tsx";
import { dayOf, jobName, prep, startWords, waiting, whenIs } from "../../ahead/prep.ts";
import { dropPlanned, tell } from "../../commands.ts";
import { noted } from "../../noted.ts";
import { HoldButton } from "../../parts/hold-button.tsx";
import { LinkButton } from "../../parts/link-button.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { routes } from "../../routes.ts";
import { openBatches, planned, specs } from "../../state.ts";
import { say } from "../../words/say.ts";
import { sayLater, sentence } from "../../words/say-later.ts";

const words = sayLater.days;

function Fault({ fault }: { readonly fault: string | undefined }) {
  if (fault === undefined) return null;
  return (
    <p class="days-strong" role="alert">
      {fault}
    </p>
  );
}

/** By when a batch has to be begun, or should have been. */
function StartBy({ id }: { readonly id: string }) {
  const start = dayOf(prep.value).latestStart.find(({ job }) => job === id)?.startAt;
  if (start === undefined) return null;
  return <p class="days-strong">{startWords(start)}</p>;
}

function PlannedEntry({ one }: { readonly one: Planned }) {
  const [fault, setFault] = useState<string>();
  const { name, id, version } = one.plan.spec;
  const spec = specs.value.find((other) => other.id === id);
  const whole = planned.value.find((other) => other.id === one.madeFor);
  const remove = async () => {
    const gone = await dropPlanned(one.id);
    if (gone.ok) tell(words.removed(name));
    else setFault(sentence(gone));
  };
  return (
    <li class="days-batch">
      <h3>{name}</h3>
      {whole !== undefined && <p>{words.madeFor(whole.plan.spec.name)}</p>}
      <StartBy id={one.id} />
      {whole === undefined && <p>{words.mustBe(whenIs(one.readyBy))}</p>}
      {spec !== undefined && spec.version !== version && <p>{words.specChanged}</p>}
      <Fault fault={fault} />
      <HoldButton
        label={words.start(name)}
        hints={say.work.hints}
        size="secondary"
        onAct={() => void startPlanned(one).then(setFault)}
      />
      <HoldButton
        label={words.remove(name)}
        hints={say.work.hints}
        size="secondary"
        tone="plain"
        onAct={() => void remove()}
      />
    </li>
  );
}

/** Asks by when a run has to be ready. */
function SetReady({ run, onDone }: { readonly run: Run; readonly onDone: () => void }) {
  const moment = useMoment(run.readyBy);
  const [fault, setFault] = useState<string>();
  const save = async () => {
    if (moment.at === undefined) return;
    const order = { type: "set-ready", by: moment.at } as const;
    const why = await noted(run.id, order, words.readySet(whenIs(moment.at)));
    if (why === undefined) onDone();
    else setFault(why);
  };
  return (
    <>
      <MomentFields moment={moment} />
      <Fault fault={fault} />
      <TapButton disabled={moment.at === undefined} onAct={() => void save()}>
        {words.saveReady}
      </TapButton>
    </>
  );
}

function RunningEntry({ run }: { readonly run: Run }) {
  const [asking, setAsking] = useState(false);
  return (
    <li class="days-batch">
      <h3>{jobName(run.id)}</h3>
      <p>{run.readyBy === undefined ? words.noPromise : words.mustBe(whenIs(run.readyBy))}</p>
      <LinkButton href={routes.run(run.id)} name={words.open(jobName(run.id))}>
        {words.openRun}
      </LinkButton>
      {asking ? (
        <SetReady run={run} onDone={() => setAsking(false)} />
      ) : (
        <TapButton onAct={() => setAsking(true)}>{words.setReady}</TapButton>
      )}
    </li>
  );
}

/** What is being made and what is planned, each with what can be done about it. */
export function Batches() {
  return (
    <>
      {openBatches.value.length > 0 && (
        <section class="days-batches">
          <h2>{words.running}</h2>
          <ul>
            {openBatches.value.map((run) => (
              <RunningEntry key={run.id} run={run} />
            ))}
          </ul>
        </section>
      )}
      {waiting.value.length > 0 && (
        <section class="days-batches">
          <h2>{words.planned}</h2>
          <ul>
            {waiting.value.map((one) => (
              <PlannedEntry key={one.id} one={one} />
            ))}
          </ul>
        </section>
      )}
    </>
  );
}
