import { useMemo, useState } from "preact/hooks";
import { calendarText } from "../../../core/board/calendar/ics.ts";
import type { DayPlan } from "../../../core/board/schedule/day-plan.ts";
import { jobOf } from "../../../core/board/schedule/job-of.ts";
import { scheduleJobs } from "../../../core/board/schedule/plan-day.ts";
import { type ReadyBy, readyByOf } from "../../../core/board/schedule/ready-by.ts";
import { usualDrip } from "../../../core/method/drip/usual-drip.ts";
import { procedureFor } from "../../../core/method/procedures.ts";
import type { Plan } from "../../../core/spec/plan.ts";
import { shareFile } from "../../device/share.ts";
import { localOf, phoneZone } from "../../local-time.ts";
import { TapButton } from "../../parts/tap-button.tsx";
import { now } from "../../state.ts";
import { dueTime, duration } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { stepTitle } from "../../words/step-title.ts";
import { Section } from "./section.tsx";

interface ReadyProps {
  readonly specId: string;
  readonly plan: Plan;
}

const JOB = "batch";
/** Two filters share a stand's place only if there is one for each. */
const capacityOf = (plan: Plan) => ({ person: 1, "filter-stand": plan.spec.wash?.filters ?? 1 });

/** The batch as the schedule sees it, ready by a moment. */
function dayOf(plan: Plan, readyBy: number, at: number) {
  const procedure = procedureFor(plan.spec, []);
  if (procedure === undefined) return undefined;
  const drip = usualDrip(plan.yield?.expected ?? 0, plan.spec.wash?.filters ?? 1);
  // An infusion may be right sooner, but it has to be ready even if it takes its whole time.
  const longest = procedure.steps.flatMap(({ id, longestFor }) =>
    longestFor === undefined ? [] : [[id, longestFor] as const],
  );
  const dripping = plan.yield === undefined ? {} : { "slow-drip": Math.max(60_000, drip) };
  const expected = { ...Object.fromEntries(longest), ...dripping };
  const { job } = jobOf(procedure, { id: JOB, name: plan.spec.name, readyBy, expected });
  return scheduleJobs([job], { capacity: capacityOf(plan) }, at);
}

/** Runs of hands-on work, each with what is to be done in it. */
function windowsOf(day: DayPlan): readonly { from: number; to: number; verbs: string }[] {
  return day.handsOnWindows.map(({ from, to }) => ({
    from,
    to,
    verbs: day.placed
      .filter((one) => one.startAt >= from && one.endAt <= to)
      .map(({ step }) => stepTitle({ id: step }))
      .join(", "),
  }));
}

function shareCalendar(plan: Plan, day: DayPlan, at: number): void {
  const name = plan.spec.name;
  const events = windowsOf(day).map(({ from, to, verbs }) => ({
    uid: `${plan.spec.id}-${from}@second-pour`,
    startMs: from,
    endMs: to,
    title: `${name}: ${verbs}`,
    detail: sayLater.plan.ready.calendarDetail,
    alarmMinutesBefore: 0,
  }));
  const text = calendarText(events, at);
  void shareFile({ name: `${plan.spec.id}.ics`, type: "text/calendar", text });
}

function Day({ plan, day, late }: { plan: Plan; day: DayPlan; late: number }) {
  const words = sayLater.plan.ready;
  const start = day.latestStart[0]?.startAt;
  return (
    <>
      {late > 0 ? (
        <p class="plan-strong">{words.late(duration(late))}</p>
      ) : (
        start !== undefined && <p class="plan-strong">{words.startBy(dueTime(start, now.value))}</p>
      )}
      <ul class="plan-ready">
        {windowsOf(day).map(({ from, to, verbs }) => (
          <li key={from}>
            {dueTime(from, now.value)}–{dueTime(to, from)}: {verbs}
          </li>
        ))}
      </ul>
      <p>{words.guess}</p>
      <TapButton onAct={() => shareCalendar(plan, day, now.value)}>{words.calendar}</TapButton>
    </>
  );
}

function Answer({ plan, ready }: { readonly plan: Plan; readonly ready: ReadyBy }) {
  const words = sayLater.plan.ready;
  // A minute is as fine as a plan need be: it is not worked out anew each second.
  const minute = Math.floor(now.value / 60_000) * 60_000;
  const found = useMemo(() => dayOf(plan, ready.at, minute), [plan, ready.at, minute]);
  if (found === undefined) return <p>{sayLater.plan.noProcedure}</p>;
  const day = found.ok ? found : found.least;
  return (
    <>
      {ready.shown !== "once" && <p>{words.odd[ready.shown]}</p>}
      <Day plan={plan} day={day} late={day.late[0]?.byMs ?? 0} />
    </>
  );
}

/** When to start so that it is ready, and when hands are wanted on the way. */
export function Ready({ specId, plan }: ReadyProps) {
  const [date, setDate] = useState("");
  const [time, setTime] = useState("17:00");
  const words = sayLater.plan.ready;
  const read = readyByOf({ date, time, zone: phoneZone() }, localOf);
  return (
    <Section specId={specId} name="ready" title={words.title} says={words.says}>
      {() => (
        <>
          <div class="plan-two">
            <label class="plan-when">
              {words.date}
              <input
                type="date"
                value={date}
                onInput={(event) => setDate(event.currentTarget.value)}
              />
            </label>
            <label class="plan-when">
              {words.time}
              <input
                type="time"
                value={time}
                onInput={(event) => setTime(event.currentTarget.value)}
              />
            </label>
          </div>
          {read.ok ? (
            <Answer plan={plan} ready={read.value} />
          ) : (
            <p>{read.refusal === "not-a-date" ? words.needDate : words.needTime}</p>
          )}
        </>
      )}
    </Section>
  );
}
