import type { PlacedStep, Span } from "../../../core/board/schedule/day-plan.ts";
import { localDays } from "../../../core/board/schedule/hours.ts";
import { byHand, dayOf, jobName, minute, prep, stepName } from "../../ahead/prep.ts";
import { localOf, phoneZone } from "../../local-time.ts";
import { clockTime, day, duration } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";

const words = sayLater.days;
const WEEK = 7;

interface DayProps {
  readonly span: Span;
}

const within = (at: number, { from, to }: Span): boolean => at >= from && at < to;

/** Work by hand that begins on a day. */
function workOf(span: Span): readonly PlacedStep[] {
  const { jobs } = prep.value;
  return dayOf(prep.value)
    .placed.filter(({ job, step, startAt, endAt }) => {
      const open = endAt > minute.value && within(startAt, span);
      return open && byHand(jobs, job, step);
    })
    .toSorted((a, b) => a.startAt - b.startAt);
}

/** By when batches were asked to be ready; one that was promised to nobody is not among them. */
const promised = () =>
  Object.entries(prep.value.promised).map(([id, readyBy]) => ({ id, readyBy }));

/** Batches that have to be ready on a day. */
const readyOn = (span: Span) => promised().filter(({ readyBy }) => within(readyBy, span));

/** Consecutive steps of one batch stand together. */
function grouped(work: readonly PlacedStep[]): readonly (readonly PlacedStep[])[] {
  const groups: PlacedStep[][] = [];
  for (const one of work) {
    const last = groups.at(-1);
    const before = last?.at(-1);
    if (last !== undefined && before?.job === one.job && before.endAt === one.startAt)
      last.push(one);
    else groups.push([one]);
  }
  return groups;
}

/** The hours of a day: when hands are wanted, and by when something has to be ready. */
function Bar({ span }: DayProps) {
  const share = (at: number) => (100 * (at - span.from)) / (span.to - span.from);
  return (
    <svg class="days-bar" viewBox="0 0 100 12" preserveAspectRatio="none" aria-hidden="true">
      <path class="days-bar-line" d="M0 6H100M25 3V9M50 3V9M75 3V9" />
      {workOf(span).map(({ job, step, startAt, endAt }) => (
        <rect
          key={`${job}/${step}`}
          class="days-bar-work"
          x={share(startAt)}
          y="1"
          width={Math.max(0.8, share(endAt) - share(startAt))}
          height="10"
        />
      ))}
      {readyOn(span).map(({ id, readyBy }) => (
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

function DayOf({ span, first }: DayProps & { readonly first: boolean }) {
  const work = workOf(span);
  const ready = readyOn(span);
  const hands = work.reduce((sum, { startAt, endAt }) => sum + endAt - startAt, 0);
  const free = hands === 0 && ready.length === 0;
  const name = within(minute.value, span) ? words.today : day(span.from);
  return (
    <details class="days-day" open={first}>
      <summary class="days-head">
        <h3>{name}</h3>
        {!free && <Bar span={span} />}
        <span class="days-sum">
          {free ? words.free : words.dayOf(duration(hands), ready.length)}
        </span>
      </summary>
      <ul class="days-list">
        {work.length === 0 && <li>{words.nothing}</li>}
        {grouped(work).map((group) => (
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
  const spans = localDays(minute.value, WEEK, phoneZone(), localOf);
  const last = spans.at(-1)?.to ?? 0;
  const beyond = promised().filter(({ readyBy }) => readyBy >= last);
  const busy = spans.find((span) => workOf(span).length > 0) ?? spans[0];
  return (
    <section class="days-week">
      <h2>{words.week}</h2>
      {spans.map((span) => (
        <DayOf key={span.from} span={span} first={span === busy} />
      ))}
      {beyond.map(({ id, readyBy }) => (
        <p key={id}>{words.readyBy(jobName(id), `${day(readyBy)}, ${clockTime(readyBy)}`)}</p>
      ))}
    </section>
  );
}
