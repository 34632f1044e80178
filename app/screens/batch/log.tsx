import { useState } from "preact/hooks";
import { type LogAct, logActsOf, phonesOf } from "../../../core/logbook/log-acts.ts";
import type { RunEvent } from "../../../core/run/event.ts";
import type { Run } from "../../../core/run/run.ts";
import { perform, tell } from "../../commands.ts";
import { thisDevice } from "../../desk.ts";
import { TapButton } from "../../parts/tap-button.tsx";
import { stampTime } from "../../words/format.ts";
import { sayLater, sentence } from "../../words/say-later.ts";
import { aboutBatch } from "./about.ts";

/** "this phone", or the others numbered in the order they first wrote. */
function phoneNames(events: readonly RunEvent[]): ReadonlyMap<string, string> {
  const here = thisDevice();
  const others = phonesOf(events).filter((device) => device !== here);
  return new Map([
    [here, sayLater.events.thisPhone],
    ...others.map((device, at) => [device, sayLater.events.otherPhone(at + 2)] as const),
  ]);
}

interface EntryProps {
  readonly entry: LogAct;
  /** Each of its events in words. */
  readonly lines: readonly string[];
  readonly phone: string;
  /** Where it can be taken back: what to call it, and why the last try failed. */
  readonly back?:
    | { readonly name: string; readonly fault: string | undefined; readonly onAct: () => void }
    | undefined;
}

function Entry({ entry, lines, phone, back }: EntryProps) {
  return (
    <li class="batch-entry" data-undone={entry.undone}>
      <p class="batch-stamp">
        <span>{stampTime(entry.at)}</span> <span>{phone}</span>
      </p>
      {entry.undone && <strong class="batch-undone">{sayLater.events.undone}</strong>}
      {lines.map((line) => (
        <p key={line}>{entry.undone ? <s>{line}</s> : line}</p>
      ))}
      {back !== undefined && (
        <>
          <TapButton name={sayLater.batch.takeBackName(back.name)} onAct={back.onAct}>
            {sayLater.batch.takeBack}
          </TapButton>
          {back.fault !== undefined && (
            <p class="batch-fault" role="alert">
              {back.fault}
            </p>
          )}
        </>
      )}
    </li>
  );
}

/** Whether an entry is where its whole act is taken back; a start is abandoned, not taken back. */
const isHandle = (acts: readonly LogAct[], entry: LogAct): boolean =>
  !entry.undone &&
  acts.findLast(({ act }) => act === entry.act) === entry &&
  acts.every(
    ({ act, events }) => act !== entry.act || events.every(({ type }) => type !== "run.started"),
  );

/** Everything that happened, in order, to the second; what was taken back stays, struck through. */
export function Log({ run, events }: { readonly run: Run; readonly events: readonly RunEvent[] }) {
  const [correcting, setCorrecting] = useState(false);
  const [failed, setFailed] = useState<{ act: string; why: string } | undefined>(undefined);
  const words = sayLater.batch;
  const acts = logActsOf(events);
  const about = aboutBatch(run, events);
  const phones = phoneNames(events);
  const takeBack = async (act: string) => {
    const stored = await perform(run.id, { type: "undo", act });
    setFailed(stored.ok ? undefined : { act, why: sentence(stored) });
    if (stored.ok) tell(words.takenBack, { runId: run.id, act: stored.value });
  };
  const backOf = (entry: LogAct): EntryProps["back"] => {
    const { act } = entry;
    if (!correcting || !isHandle(acts, entry)) return undefined;
    const fault = failed?.act === act ? failed.why : undefined;
    return { name: about.act(act), fault, onAct: () => void takeBack(act) };
  };
  return (
    <section class="part">
      <h2>{words.log}</h2>
      <TapButton pressed={correcting} onAct={() => setCorrecting(!correcting)}>
        {correcting ? words.correctDone : words.correct}
      </TapButton>
      {correcting && <p>{words.correctHint}</p>}
      <ol class="batch-log">
        {acts.map((entry) => (
          <Entry
            key={entry.events[0]?.id}
            entry={entry}
            lines={entry.events.map((event) => sayLater.events.of(event, about))}
            phone={phones.get(entry.device) ?? entry.device}
            back={backOf(entry)}
          />
        ))}
      </ol>
    </section>
  );
}
