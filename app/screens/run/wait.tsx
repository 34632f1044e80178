import { alarmsOf } from "../../../core/run/alarm.ts";
import { type Run, stepOfVisit, type Visit } from "../../../core/run/run.ts";
import { now } from "../../state.ts";
import { countdown, dueTime, duration } from "../../words/format.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";

interface WorkProps {
  readonly run: Run;
  readonly visit: Visit;
}

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
