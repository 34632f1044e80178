import type { PlacedStep, Span } from "../../../core/board/schedule/day-plan.ts";
import { localDays } from "../../../core/board/schedule/hours.ts";
import { windowsOf, workByHand } from "../../ahead/by-hand.ts";
import { jobName, minute, prep, stepName } from "../../ahead/prep.ts";
import { localOf, phoneZone } from "../../local-time.ts";
import { clockTime, day, duration } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";

const words = sayLater.days;
const WEEK = 7;

/** A day, with what is done by hand on it and what has to be ready. */
interface Day {
  readonly span: Span;
  /** In order of time. */
  readonly work: readonly PlacedStep[];
  readonly ready: readonly Promised[];
}

interface Promised {
  readonly id: string;
  readonly readyBy: number;
}

const within = (at: number, { from, to }: Span): boolean => at >= from && at < to;

/** The coming days, and what is promised for after them. */
function daysAhead(): { readonly days: readonly Day[]; readonly beyond: readonly Promised[] } {
  const spans = localDays(minute.value, WEEK, phoneZone(), localOf);
  const work = workByHand(prep.value)
    .filter(({ endAt }) => endAt > minute.value)
    .toSorted((a, b) => a.startAt - b.startAt);
  // By when batches were asked to be ready; one that was promised to nobody is not among them.
  const promised = Object.entries(prep.value.promised).map(([id, readyBy]) => ({ id, readyBy }));
  const end = spans.at(-1)?.to ?? 0;
  return {
    days: spans.map((span) => ({
      span,
      work: work.filter(({ startAt }) => within(startAt, span)),
      ready: promised.filter(({ readyBy }) => within(readyBy, span)),
    })),
    beyond: promised.filter(({ readyBy }) => readyBy >= end),
  };
}

/** The hours of a day: when hands are wanted, and by when something has to be ready. */
function Bar({ span, work, ready }: Day) {
  const share = (at: number) => (100 * (at - span.from)) / (span.to - span.from);
  return (
    <svg class="days-bar" viewBox="0 0 100 12" preserveAspectRatio="none" aria-hidden="true">
      <path class="days-bar-line" d="M0 6H100M25 3V9M50 3V9M75 3V9" />
      {work.map(({ job, step, startAt, endAt }) => (
        <rect
          key={`${job}/${step}`}
          class="days-bar-work"
          x={share(startAt)}
          y="1"
          width={Math.max(0.8, share(endAt) - share(startAt))}
          height="10"
        />
      ))}
      {ready.map(({ id, readyBy }) => (
        <path key={id} class="days-bar-ready" d={`M${share(readyBy)} 0V12`} />
      ))}
      {within(minute.value, span) && (
        <path class="days-bar-now" d={`M${share(minute.value)} 0V12`} />
      )}
    </svg>
  );
}

function Work({ group }: { readonly group: readonly PlacedStep[] }) {
  const [first] = group;
  const last = group.at(-1);
  if (first === undefined || last === undefined) return null;
  return (
    <li class="days-work">
      <b class="days-time">{words.window(clockTime(first.startAt), clockTime(last.endAt))}</b>
      <span>{jobName(first.job)}</span>
      <span class="days-steps">{group.map(({ job, step }) => stepName(job, step)).join(", ")}</span>
    </li>
  );
}

function DayOf({ day: one, first }: { readonly day: Day; readonly first: boolean }) {
  const { span, work, ready } = one;
  const hands = work.reduce((sum, { startAt, endAt }) => sum + endAt - startAt, 0);
  const free = hands === 0 && ready.length === 0;
  const name = within(minute.value, span) ? words.today : day(span.from);
  return (
    <details class="days-day" open={first}>
      <summary class="days-head">
        <h3>{name}</h3>
        {!free && <Bar {...one} />}
        <span class="days-sum">
          {free ? words.free : words.dayOf(duration(hands), ready.length)}
        </span>
      </summary>
      <ul class="days-list">
        {work.length === 0 && <li>{words.nothing}</li>}
        {windowsOf(work).map((group) => (
          <Work key={`${group[0]?.job}/${group[0]?.step}`} group={group} />
        ))}
        {ready.map(({ id, readyBy }) => (
          <li key={id} class="days-ready">
            {words.readyBy(jobName(id), clockTime(readyBy))}
          </li>
        ))}
      </ul>
    </details>
  );
}

/** The week ahead, a row for each day. */
export function Week() {
  const { days, beyond } = daysAhead();
  const busy = days.find(({ work }) => work.length > 0) ?? days[0];
  return (
    <section class="days-week">
      <h2>{words.week}</h2>
      {days.map((one) => (
        <DayOf key={one.span.from} day={one} first={one === busy} />
      ))}
      {beyond.map(({ id, readyBy }) => (
        <p key={id}>{words.readyBy(jobName(id), `${day(readyBy)}, ${clockTime(readyBy)}`)}</p>
      ))}
    </section>
  );
}
