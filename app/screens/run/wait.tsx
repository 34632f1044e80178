import { alarmsOf } from "../../../core/run/alarm.ts";
import { type Run, stepOfVisit, type Visit } from "../../../core/run/run.ts";
import { HoldButton } from "../../parts/hold-button.tsx";
import { now } from "../../state.ts";
import { countdown, dueTime, duration } from "../../words/format.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";
import { act } from "./act.ts";

interface WorkProps {
  readonly run: Run;
  readonly visit: Visit;
}

/** Waits shorter than this are not worth a second alarm, ms. */
const WORTH_HANDING_OVER = 30 * 60_000;

/** What is left until somebody is wanted, or how long ago that was. */
export function Countdown({ run, visit }: WorkProps) {
  const [alarm] = alarmsOf(run);
  const watched = stepOfVisit(run, visit).kind === "watched-wait";
  // A watched wait that nobody need answer again simply counts up from its start.
  const dueAt = alarm?.dueAt ?? visit.dueAt ?? now.value;
  const left = dueAt - now.value;
  const over = left <= 0;
  const digits = countdown(Math.abs(left));
  const time = dueTime(dueAt, now.value);
  const when = watched
    ? over
      ? sayLater.run.askedAt(time)
      : sayLater.run.askAt(time)
    : say.work.due(time);
  return (
    <div class="run-countdown" data-over={over} role="timer">
      <span class="run-digits" data-long={digits.length > "59:59".length}>
        {digits}
      </span>
      <span class="run-when">{over ? sayLater.run.overdue(duration(-left)) : when}</span>
    </div>
  );
}

/** A long wait is also set in the phone's own clock: a page cannot ring once the phone sleeps. */
export function HandOver({ run, visit }: WorkProps) {
  const [alarm] = alarmsOf(run);
  if (alarm === undefined || alarm.dueAt - visit.startedAt < WORTH_HANDING_OVER) return null;
  if (alarm.dueAt <= now.value) return null;
  const time = dueTime(alarm.dueAt, now.value);
  if (visit.handed?.to === "phone-clock" && visit.handed.dueAt === alarm.dueAt) {
    return <p class="run-fact">{sayLater.run.handedOver(time)}</p>;
  }
  const { visit: key, dueAt } = alarm;
  return (
    <div class="run-handover">
      <p class="run-fact">{sayLater.run.handOver(time)}</p>
      <HoldButton
        label={sayLater.run.handDone}
        hints={say.work.hints}
        tone="plain"
        size="secondary"
        onAct={() =>
          act(
            run.id,
            { type: "hand-alarm", visit: key, dueAt, to: "phone-clock" },
            sayLater.run.handDone,
          )
        }
      />
    </div>
  );
}
