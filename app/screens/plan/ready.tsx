import { useMemo, useState } from "preact/hooks";
import { type Parts, partsOf } from "../../../core/board/plan-ahead.ts";
import type { Planned } from "../../../core/board/planned.ts";
import type { PlacedStep } from "../../../core/board/schedule/day-plan.ts";
import { type PrepDay, prepDay } from "../../../core/board/schedule/prep-day.ts";
import { procedureFor } from "../../../core/method/procedures.ts";
import type { Plan } from "../../../core/spec/plan.ts";
import { windowsOf, workByHand } from "../../ahead/by-hand.ts";
import { MomentFields, useMoment } from "../../ahead/moment.tsx";
import { dayOf, limitsUntil, minute, seen, waiting } from "../../ahead/prep.ts";
import { shortSentence } from "../../ahead/short-sentence.ts";
import { savePlanned, tell } from "../../commands.ts";
import { freshId } from "../../desk.ts";
import { house, shelf } from "../../house.ts";
import { specBook } from "../../pantry.ts";
import { HoldButton } from "../../parts/hold-button.tsx";
import { LinkButton } from "../../parts/link-button.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { routes } from "../../routes.ts";
import { now, openBatches, ownProcedures } from "../../state.ts";
import { dueTime, duration } from "../../words/format.ts";
import { named } from "../../words/joined.ts";
import { say } from "../../words/say.ts";
import { sayLater, sentence } from "../../words/say-later.ts";
import { stepTitle } from "../../words/step-title.ts";
import { Section } from "./section.tsx";
import { show } from "./show.ts";

interface ReadyProps {
  readonly specId: string;
  readonly plan: Plan;
  readonly changes: readonly string[];
}

/** The batch as it would stand on the prep list, and what has to be made for it first. */
function useCandidate({ plan, changes }: ReadyProps, readyBy: number) {
  // One id for as long as the plan stands on the screen: putting it on the list twice changes it.
  const id = useMemo(freshId, [plan]);
  return useMemo(() => {
    const procedure = procedureFor(plan.spec, ownProcedures.value);
    if (procedure === undefined) return undefined;
    const batch: Planned = { id, plan, procedure, readyBy, changes: [...changes] };
    const parts = partsOf(batch, {
      cupboard: shelf.value,
      specs: specBook.value,
      rules: house.value,
      procedures: ownProcedures.value,
      newId: freshId,
    });
    return { batch, parts };
  }, [id, plan, changes.join(), readyBy]);
}

/** When hands are wanted for one batch, each time with what is to be done. */
function windowLines(found: PrepDay, { id, procedure }: Planned): readonly string[] {
  const title = ({ step }: PlacedStep) =>
    stepTitle(procedure.steps.find((one) => one.id === step) ?? { id: step });
  return windowsOf(workByHand(found).filter(({ job }) => job === id)).map((window) => {
    const from = window[0]?.startAt ?? 0;
    const to = window.at(-1)?.endAt ?? 0;
    return named(`${dueTime(from, now.value)}–${dueTime(to, from)}`, window.map(title).join(", "));
  });
}

/** What the house makes itself for this batch: on the prep list with it, unless it is there. */
function PartsFirst(props: { parts: Parts; take: boolean; onTake: (take: boolean) => void }) {
  const { parts, take, onTake } = props;
  const words = sayLater.days.parts;
  if (parts.planned.length === 0 && parts.unplanned.length === 0) return null;
  return (
    <>
      <h3>{words.title}</h3>
      <ul class="plan-ready">
        {parts.planned.map(({ id, plan }) => (
          <li key={id}>{words.part(plan.spec.name, show(plan.finalMl))}</li>
        ))}
      </ul>
      {parts.unplanned.length > 0 && <p>{words.unplanned(parts.unplanned.join(", "))}</p>}
      {parts.planned.length > 0 && (
        <TapButton pressed={take} onAct={() => onTake(!take)}>
          {take ? words.add : words.skip}
        </TapButton>
      )}
    </>
  );
}

function Put({ some }: { readonly some: readonly Planned[] }) {
  const [fault, setFault] = useState<string>();
  const words = sayLater.days;
  const put = async () => {
    const saved = await savePlanned(some);
    setFault(saved.ok ? undefined : sentence(saved));
    if (!saved.ok) return;
    tell(words.isOn(some.length - 1));
    location.hash = routes.days;
  };
  return (
    <>
      {fault !== undefined && (
        <p class="plan-say" role="alert">
          {fault}
        </p>
      )}
      <HoldButton
        label={words.put}
        hints={say.work.hints}
        size="secondary"
        onAct={() => void put()}
      />
    </>
  );
}

function Answer(props: ReadyProps & { readonly at: number }) {
  const words = sayLater.plan.ready;
  const [take, setTake] = useState(true);
  const candidate = useCandidate(props, props.at);
  const some =
    candidate === undefined ? [] : [candidate.batch, ...(take ? candidate.parts.planned : [])];
  // Worked out with everything that is on the list already.
  const found = useMemo(() => {
    const limits = limitsUntil(props.at);
    return prepDay(
      openBatches.value,
      [...waiting.value, ...some],
      limits,
      minute.value,
      seen.value,
    );
  }, [candidate, take, minute.value]);
  if (candidate === undefined) return <p>{sayLater.plan.noProcedure}</p>;
  const { batch, parts } = candidate;
  const day = dayOf(found);
  const start = day.latestStart.find(({ job }) => some.some(({ id }) => id === job));
  const late = day.late.find(({ job }) => job === batch.id)?.byMs ?? 0;
  const nameOf = (id: string) => some.find((one) => one.id === id)?.plan.spec.name;
  return (
    <>
      {late > 0 ? (
        <p class="plan-strong">{words.late(duration(late))}</p>
      ) : (
        start !== undefined && (
          <p class="plan-strong">{words.startBy(dueTime(start.startAt, now.value))}</p>
        )
      )}
      {!found.plan.ok && <p class="plan-say">{shortSentence(found.plan, nameOf)}</p>}
      <ul class="plan-ready">
        {windowLines(found, batch).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <PartsFirst parts={parts} take={take} onTake={setTake} />
      <p>{words.guess}</p>
      <Put some={some} />
    </>
  );
}

function Choose(props: ReadyProps) {
  const moment = useMoment();
  return (
    <>
      <MomentFields moment={moment} />
      {moment.at !== undefined && <Answer {...props} at={moment.at} />}
      <LinkButton href={routes.days}>{sayLater.days.link}</LinkButton>
    </>
  );
}

/** When to start so that it is ready, when hands are wanted on the way, and onto the prep list. */
export function Ready(props: ReadyProps) {
  const words = sayLater.plan.ready;
  return (
    <Section specId={props.specId} name="ready" title={words.title} says={words.says}>
      {() => <Choose {...props} />}
    </Section>
  );
}
