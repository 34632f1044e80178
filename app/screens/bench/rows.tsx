import { type BenchRow, benchRows } from "../../../core/board/bench.ts";
import { type Glass, glassOf } from "../../../core/board/glass.ts";
import { stepOfVisit } from "../../../core/run/run.ts";
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

function When({ row }: { readonly row: BenchRow }) {
  const { alarm, lateBy } = row;
  if (alarm === undefined) {
    return (
      <span class="bench-when">
        <span class="bench-wait">{say.bench.waitsFor}</span>
        <span>{say.work.since(duration(now.value - row.visit.startedAt))}</span>
      </span>
    );
  }
  if (alarm.dueAt <= now.value) {
    return <span class="bench-when bench-due">{howLate(lateBy)}</span>;
  }
  return (
    <span class="bench-when">
      <span class="bench-digits">{countdown(alarm.dueAt - now.value)}</span>
      <span>{say.work.due(dueTime(alarm.dueAt, now.value))}</span>
    </span>
  );
}

function Row({ row }: { readonly row: BenchRow }) {
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
          <When row={row} />
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

/** The batches being made, soonest wanted first. */
export function BenchRows() {
  return (
    <>
      <StatusLine status={statusNow()} />
      <ul class="bench-rows">
        {benchRows(openRuns.value, now.value).map((row) => (
          <Row key={row.run.id} row={row} />
        ))}
      </ul>
    </>
  );
}
