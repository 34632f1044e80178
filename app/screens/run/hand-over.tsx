import { useState } from "preact/hooks";
import { MINUTE } from "../../../core/quantity/time-units-table.ts";
import { type OtherWatch, WATCHERS } from "../../../core/run/event.ts";
import type { Run } from "../../../core/run/run.ts";
import { type SecondWatch as Handed, secondWatchOf } from "../../../core/run/second-watch.ts";
import { Chips } from "../../parts/chips.tsx";
import { HoldButton } from "../../parts/hold-button.tsx";
import { LinkButton } from "../../parts/link-button.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { routes } from "../../routes.ts";
import { now } from "../../state.ts";
import { dueTime, duration } from "../../words/format.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";
import { act } from "./act.ts";
import { CalendarFile } from "./calendar-file.tsx";
import { Watcher } from "./watcher.tsx";

interface WayProps {
  readonly run: Run;
  readonly handed: Handed;
  /** It was said, and stored. */
  readonly onHanded: () => void;
}

/** Nobody puts the phone away for less, ms. Judgement. */
const WORTH_DIMMING = 2 * MINUTE;

/** Logs that something else watches, and offers to take it back. */
async function hand(
  { run, handed, onHanded }: WayProps,
  to: OtherWatch,
  done: string,
  who?: string,
): Promise<void> {
  const { visit, dueAt } = handed;
  const whom = who === undefined ? {} : { who };
  const refused = await act(run.id, { type: "hand-alarm", visit, dueAt, to, ...whom }, done);
  if (refused === undefined) onHanded();
}

/** The phone's own clock rings though the phone sleeps; a page cannot. */
function PhoneClock(way: WayProps & { readonly withFile: boolean }) {
  const words = sayLater.handOver;
  const { run, handed, withFile } = way;
  return (
    <>
      <p class="run-fact">{words.setClock(dueTime(handed.dueAt, now.value))}</p>
      <HoldButton
        label={words.clockDone}
        hints={say.work.hints}
        tone="plain"
        size="secondary"
        onAct={() => hand(way, "phone-clock", words.clockDone)}
      />
      {withFile && <CalendarFile run={run} handed={handed} />}
    </>
  );
}

/** Writing calls nobody, but whoever passes by can read it. */
function OnVessel(way: WayProps) {
  const words = sayLater.handOver;
  const { run, handed } = way;
  return (
    <>
      <p class="run-fact">
        {words.write} {run.batch}, {dueTime(handed.dueAt, now.value)}
      </p>
      <LinkButton href={routes.vessel(run.id)}>{words.printLabel}</LinkButton>
      <HoldButton
        label={words.vesselDone}
        hints={say.work.hints}
        tone="plain"
        size="secondary"
        onAct={() => hand(way, "vessel", words.vesselDone)}
      />
    </>
  );
}

/** What else watches it already. */
function Told({ handed }: { readonly handed: Handed }) {
  const words = sayLater.handOver;
  const time = dueTime(handed.dueAt, now.value);
  return (
    <>
      {handed.told.map(({ to, who }) => (
        <p class="run-fact" key={`${to} ${who}`}>
          {to === "person" ? words.told.person(time, who ?? words.somebody) : words.told[to](time)}
        </p>
      ))}
    </>
  );
}

/** One of the three ways, chosen and done. */
function Ways(way: WayProps) {
  const [to, setTo] = useState<OtherWatch>("phone-clock");
  const words = sayLater.handOver;
  return (
    <>
      <Chips
        label={words.which}
        options={WATCHERS.map((value) => ({ value, label: words.ways[value] }))}
        value={to}
        onChange={setTo}
      />
      {to === "phone-clock" && <PhoneClock {...way} withFile />}
      {to === "person" && (
        <Watcher onName={(who) => hand(way, "person", words.personDone(who), who)} />
      )}
      {to === "vessel" && <OnVessel {...way} />}
    </>
  );
}

/** Whether the wait is longer than anybody stands by, and nothing else watches it. */
export const asksForWatch = (handed: Handed | undefined): boolean =>
  handed?.need === "asked" && handed.dueAt > now.value;

/**
 * What else watches a wait: offered from half an hour on, asked for from four hours on, and never in
 * the way of the work.
 */
export function HandOver({ run }: { readonly run: Run }) {
  const [open, setOpen] = useState(false);
  const handed = secondWatchOf(run);
  if (handed === undefined || handed.dueAt <= now.value) return null;
  const { need, told, dueAt } = handed;
  const words = sayLater.handOver;
  const asked = asksForWatch(handed);
  const way = { run, handed, onHanded: () => setOpen(false) };
  const dim = <LinkButton href={routes.dim(run.id)}>{words.dim}</LinkButton>;
  if (need === "none") {
    return dueAt - now.value < WORTH_DIMMING ? null : <div class="run-handover">{dim}</div>;
  }
  return (
    <div class="run-handover" data-asked={asked}>
      {asked && <h2 class="run-fact run-strong">{words.asks(duration(dueAt - now.value))}</h2>}
      {told.length === 0 && <p class="run-note">{words.leaving}</p>}
      <Told handed={handed} />
      {open && <Ways {...way} />}
      {!open && !asked && told.length === 0 && <PhoneClock {...way} withFile={false} />}
      <div class="run-pair">
        {dim}
        <TapButton pressed={open} onAct={() => setOpen(!open)}>
          {open ? words.fewer : asked ? words.answer : words.others}
        </TapButton>
      </div>
    </div>
  );
}
