import { useEffect } from "preact/hooks";
import { calendarText } from "../../core/board/calendar/ics.ts";
import { workByHand } from "../ahead/by-hand.ts";
import { asSeen, dayOf, jobName, minute, prep, stepName, waiting } from "../ahead/prep.ts";
import { QuietStretch } from "../ahead/quiet.tsx";
import { saveSettings } from "../commands.ts";
import { printPage } from "../device/print.ts";
import { shareFile } from "../device/share.ts";
import { LinkButton } from "../parts/link-button.tsx";
import { TapButton } from "../parts/tap-button.tsx";
import { routes } from "../routes.ts";
import { now, openBatches, settings } from "../state.ts";
import { fileDate } from "../words/format.ts";
import { named } from "../words/joined.ts";
import { say } from "../words/say.ts";
import { sayLater } from "../words/say-later.ts";
import { Batches } from "./days/batches.tsx";
import { MovedSince, Trouble } from "./days/trouble.tsx";
import { Week } from "./days/week.tsx";
import "./days.css";

const words = sayLater.days;

/** Everything still to be done by hand, as calendar entries that ring when they begin. */
function shareCalendar(): void {
  const events = workByHand(prep.value)
    .filter(({ endAt }) => endAt > now.value)
    .map(({ job, step, startAt, endAt }) => ({
      uid: `${job}-${step}@second-pour`,
      startMs: startAt,
      endMs: endAt,
      title: named(jobName(job), stepName(job, step)),
      detail: words.calendarDetail,
      alarmMinutesBefore: 0,
    }));
  if (events.length === 0) return;
  const text = calendarText(events, now.value);
  void shareFile({ name: `prep-${fileDate(now.value)}.ics`, type: "text/calendar", text });
}

/** What came onto the list is known as it was first planned; what somebody saw stays as it was seen. */
function useSeen(): void {
  const { placed } = dayOf(prep.value);
  const { seenPrep, seenReady } = settings.value;
  const known = new Set(seenPrep.map(({ job }) => job));
  const there = new Set(placed.map(({ job }) => job));
  const fresh = placed.filter(({ job }) => !known.has(job));
  const gone = seenPrep.some(({ job }) => !there.has(job));
  useEffect(() => {
    if (fresh.length === 0 && !gone) return;
    const kept = seenPrep.filter(({ job }) => there.has(job));
    const next = asSeen([...kept, ...fresh], prep.value);
    void saveSettings({ ...next, seenReady: { ...next.seenReady, ...seenReady } });
  }, [fresh.length, gone]);
}

function RoomLine() {
  const { people, filterStands, hours } = settings.value;
  const open = hours.from === hours.to ? words.always : words.window(hours.from, hours.to);
  return (
    <p class="days-quiet-words">
      {words.room(people, filterStands, open)}. {words.guess}{" "}
      <a href={routes.kit}>{words.changeRoom}</a>
    </p>
  );
}

function Filled() {
  useSeen();
  const placed = dayOf(prep.value).placed.some(({ endAt }) => endAt > minute.value);
  return (
    <>
      <Trouble />
      <MovedSince />
      <QuietStretch />
      <Week />
      <Batches />
      <RoomLine />
      <div class="days-acts">
        <TapButton onAct={() => void printPage()}>{words.print}</TapButton>
        <TapButton disabled={!placed} onAct={shareCalendar}>
          {words.calendar}
        </TapButton>
        <LinkButton href={routes.hand("day")}>{words.toHand}</LinkButton>
      </div>
    </>
  );
}

/** The days ahead: what hands are wanted for and when, worked back from every ready-by. */
export function DaysScreen() {
  const none = waiting.value.length === 0 && openBatches.value.length === 0;
  return (
    <main class="days">
      <LinkButton tone="quiet" href={routes.bench}>
        {say.bench.title}
      </LinkButton>
      <h1>{words.title}</h1>
      {none ? <p class="days-empty">{words.empty}</p> : <Filled />}
      <LinkButton href={routes.specs} tone={none ? "main" : "plain"}>
        {none ? words.toSpecs : words.more}
      </LinkButton>
    </main>
  );
}
