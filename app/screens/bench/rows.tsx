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

type Mood = "still" | "waiting" | "due";

const moodOf = ({ alarm }: BenchRow, at: number): Mood =>
  alarm === undefined ? "still" : alarm.dueAt <= at ? "due" : "waiting";

/** What is in the glass, in words. */
function glassWords(glass: Glass): string {
  const bands = glass.bands.map((band) => say.bench.bands[band.look]);
  return bands.length === 0 ? say.bench.bands.empty : bands.join(", ");
}

/** The moment that rows are drawn for, and how times are told that go on meanwhile. */
export interface BenchMoment {
  /** Epoch ms. */
  readonly at: number;
  /** What is left until then. */
  readonly left: (dueAt: number) => string;
  /** How long it is since. */
  readonly ago: (since: number) => string;
  /** How late that is. */
  readonly late: (dueAt: number) => string;
}

const momentOf = (at: number): BenchMoment => ({
  at,
  left: (dueAt) => countdown(dueAt - at),
  ago: (since) => duration(at - since),
  late: (dueAt) => howLate(at - dueAt),
});

interface RowProps {
  readonly row: BenchRow;
  readonly moment: BenchMoment;
}

function When({ row, moment }: RowProps) {
  const { alarm, visit } = row;
  if (alarm === undefined) {
    return (
      <span class="bench-when">
        <span class="bench-wait">{say.bench.waitsFor}</span>
        <span>{say.work.since(moment.ago(visit.startedAt))}</span>
      </span>
    );
  }
  if (alarm.dueAt <= moment.at) {
    return <span class="bench-when bench-due">{moment.late(alarm.dueAt)}</span>;
  }
  return (
    <span class="bench-when">
      <span class="bench-digits">{moment.left(alarm.dueAt)}</span>
      <span>{say.work.due(dueTime(alarm.dueAt, moment.at))}</span>
    </span>
  );
}

function Row({ row, moment }: RowProps) {
  const { run, visit } = row;
  const glass = glassOf(run);
  const verb = stepTitle(stepOfVisit(run, visit));
  const name = run.plan.spec.name;
  const mood = moodOf(row, moment.at);
  return (
    <li>
      <a class="bench-row" data-mood={mood} href={routes.run(run.id)}>
        <Column
          size="rack"
          layers={glass.bands}
          line={glass.line}
          mood={mood}
          label={say.bench.column(name, glassWords(glass))}
        />
        <span class="bench-words">
          <span class="bench-verb">{verb}</span>
          <span class="bench-name">
            {name} <span class="bench-batch">{run.batch}</span>
          </span>
          <When row={row} moment={moment} />
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
  /** That the page is drawn for where nothing is given. */
  readonly moment?: BenchMoment | undefined;
}

/** The batches being made, soonest wanted first. */
export function BenchRows({ status, moment = momentOf(now.value) }: BenchRowsProps) {
  return (
    <>
      <StatusLine status={status ?? statusNow()} />
      <ul class="bench-rows">
        {benchRows(openRuns.value, moment.at).map((row) => (
          <Row key={row.run.id} row={row} moment={moment} />
        ))}
      </ul>
    </>
  );
}
