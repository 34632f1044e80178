import { type BenchRow, benchRows } from "../../../core/board/bench.ts";
import { type Glass, glassOf } from "../../../core/board/glass.ts";
import { stepOfVisit } from "../../../core/run/run.ts";
import type { AlarmStatus } from "../../alarm/status.ts";
import { statusNow } from "../../known-status.ts";
import { Column } from "../../parts/column.tsx";
import { LinkButton } from "../../parts/link-button.tsx";
import { StatusLine } from "../../parts/status-line.tsx";
import { routes } from "../../routes.ts";
import { now, openRuns } from "../../state.ts";
import { countdown, dueTime, duration } from "../../words/format.ts";
import { howLate } from "../../words/how-late.ts";
import { say } from "../../words/say.ts";
import { stepTitle } from "../../words/step-title.ts";

function moodOf(row: BenchRow): "still" | "waiting" | "due" {
  if (row.alarm === undefined) return "still";
  return row.lateBy > 0 || row.alarm.dueAt <= now.value ? "due" : "waiting";
}

/** What is in the glass, in words. */
function glassWords(glass: Glass): string {
  const bands = glass.bands.map((band) => say.bench.bands[band.look]);
  return bands.length === 0 ? say.bench.bands.empty : bands.join(", ");
}

/** Times that change while nobody does anything, in words. */
export interface MovingTimes {
  /** What is left until then. */
  readonly left: (at: number) => string;
  /** How long it is since. */
  readonly ago: (at: number) => string;
  /** How late that is. */
  readonly late: (dueAt: number) => string;
}

/** As they are at the moment that the page is drawn for. */
const TIMES_NOW: MovingTimes = {
  left: (at) => countdown(at - now.value),
  ago: (at) => duration(now.value - at),
  late: (dueAt) => howLate(now.value - dueAt),
};

function When({ row, times }: { readonly row: BenchRow; readonly times: MovingTimes }) {
  const { alarm, visit } = row;
  if (alarm === undefined) {
    return (
      <span class="bench-when">
        <span class="bench-wait">{say.bench.waitsFor}</span>
        <span>{say.work.since(times.ago(visit.startedAt))}</span>
      </span>
    );
  }
  if (alarm.dueAt <= now.value) {
    return <span class="bench-when bench-due">{times.late(alarm.dueAt)}</span>;
  }
  return (
    <span class="bench-when">
      <span class="bench-digits">{times.left(alarm.dueAt)}</span>
      <span>{say.work.due(dueTime(alarm.dueAt, now.value))}</span>
    </span>
  );
}

function Row({ row, times }: { readonly row: BenchRow; readonly times: MovingTimes }) {
  const { run, visit } = row;
  const glass = glassOf(run);
  const verb = stepTitle(stepOfVisit(run, visit));
  const name = run.plan.spec.name;
  return (
    <li>
      <a class="bench-row" data-mood={moodOf(row)} href={routes.run(run.id)}>
        <Column
          size="rack"
          layers={glass.bands}
          line={glass.line}
          mood={moodOf(row)}
          label={say.bench.column(name, glassWords(glass))}
        />
        <span class="bench-words">
          <span class="bench-verb">{verb}</span>
          <span class="bench-name">
            {name} <span class="bench-batch">{run.batch}</span>
          </span>
          <When row={row} times={times} />
        </span>
      </a>
      {stepOfVisit(run, visit).work === "drip" && (
        <LinkButton href={routes.read(run.id)} name={`${say.bench.read}: ${name} ${run.batch}`}>
          {say.bench.read}
        </LinkButton>
      )}
    </li>
  );
}

export interface BenchRowsProps {
  /** What the line above them says; as things are now where nothing is given. */
  readonly status?: AlarmStatus | undefined;
  readonly times?: MovingTimes | undefined;
}

/** The batches being made, soonest wanted first. */
export function BenchRows({ status, times = TIMES_NOW }: BenchRowsProps) {
  return (
    <>
      <StatusLine status={status ?? statusNow()} />
      <ul class="bench-rows">
        {benchRows(openRuns.value, now.value).map((row) => (
          <Row key={row.run.id} row={row} times={times} />
        ))}
      </ul>
    </>
  );
}
