import { useEffect, useState } from "preact/hooks";
import { dueFileOf } from "../../../core/board/calendar/due-file.ts";
import { calendarText } from "../../../core/board/calendar/ics.ts";
import { MINUTE } from "../../../core/quantity/time-units-table.ts";
import { openVisit, type Run, stepOfVisit } from "../../../core/run/run.ts";
import type { SecondWatch } from "../../../core/run/second-watch.ts";
import { leaveDueFile } from "../../device/due-file.ts";
import { saveFile } from "../../device/share.ts";
import { LinkButton } from "../../parts/link-button.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { now } from "../../state.ts";
import { sayLater } from "../../words/say-later.ts";
import { stepTitle } from "../../words/step-title.ts";

interface CalendarProps {
  readonly run: Run;
  readonly handed: SecondWatch;
}

/** So long does the entry stand in the calendar, so that it can be seen there. Judgement. */
const SHOWN_FOR = 15 * MINUTE;

/** An entry with an alarm at the moment itself. */
function entryOf({ run, handed: { visit, dueAt } }: CalendarProps): string {
  const open = openVisit(run);
  const verb = open === undefined ? visit : stepTitle(stepOfVisit(run, open));
  const words = sayLater.handOver;
  return calendarText(
    [
      {
        uid: `${run.id}.${visit}`,
        startMs: dueAt,
        endMs: dueAt + SHOWN_FOR,
        title: words.calendarEntry(run.plan.spec.name, verb),
        detail: words.calendarDetail(run.batch),
        alarmMinutesBefore: 0,
      },
    ],
    now.value,
  );
}

type Place = { readonly type: "making" | "no-worker" } | { readonly type: "at"; href: string };

/** The wait as a calendar file, by an address of its own where the worker can hand it out. */
export function CalendarFile({ run, handed }: CalendarProps) {
  const [place, setPlace] = useState<Place>({ type: "making" });
  const [saved, setSaved] = useState(false);
  const { visit, dueAt } = handed;
  const path = dueFileOf(run.id, visit);
  useEffect(() => {
    let current = true;
    void leaveDueFile({ path, text: entryOf({ run, handed }), dueAt }, now.value).then((href) => {
      if (current) setPlace(href === undefined ? { type: "no-worker" } : { type: "at", href });
    });
    return () => {
      current = false;
    };
  }, [path, dueAt]);
  const words = sayLater.handOver;
  const save = () => {
    const name = path.split("/").at(-1) ?? path;
    saveFile({ name, type: "text/calendar", text: entryOf({ run, handed }) });
    setSaved(true);
  };
  return (
    <>
      {place.type === "at" ? (
        <LinkButton href={place.href}>{words.calendar}</LinkButton>
      ) : (
        <TapButton disabled={place.type === "making"} onAct={save}>
          {words.calendar}
        </TapButton>
      )}
      <p class="run-note" role="status">
        {saved ? words.calendarSaved : words.calendarNote}
      </p>
    </>
  );
}
