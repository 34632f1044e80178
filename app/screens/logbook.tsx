import { type EndedBatch, logbookOf } from "../../core/logbook/logbook.ts";
import { LinkButton } from "../parts/link-button.tsx";
import { routes } from "../routes.ts";
import { openRuns, runs } from "../state.ts";
import { dateYear, percent } from "../words/format.ts";
import { sayLater } from "../words/say-later.ts";
import "./logbook.css";

function Row({ row }: { readonly row: EndedBatch }) {
  const words = sayLater.logbook;
  const { yielded, ending, passes } = row;
  const details = [
    ...(yielded === undefined ? [] : [words.expected(percent(yielded.expectedShare))]),
    ...(passes === 0 ? [] : [words.passes(passes)]),
  ];
  return (
    <li>
      <a class="logbook-row" href={routes.batch(row.runId)} data-how={ending.how}>
        <span class="logbook-name">
          {row.name} <span class="logbook-batch">{row.batch}</span>
        </span>
        <strong class="logbook-yield">
          {yielded === undefined ? words.noYield : words.through(percent(yielded.share))}
        </strong>
        <span class="logbook-quiet">{details.join(", ")}</span>
        <span class="logbook-end">
          {ending.how === "finished" ? words.finished : words.abandoned(row.reason ?? "")}
          <span class="logbook-quiet">{dateYear(ending.at)}</span>
        </span>
      </a>
    </li>
  );
}

function Empty() {
  const words = sayLater.logbook;
  const running = openRuns.value.length > 0;
  return (
    <>
      <p class="logbook-empty">{words.empty}</p>
      <LinkButton href={running ? routes.bench : routes.specs}>
        {running ? words.toBench : words.toSpecs}
      </LinkButton>
    </>
  );
}

/** Batches that ended, the latest first. */
export function LogbookScreen() {
  const rows = logbookOf(runs.value);
  return (
    <main class="logbook">
      <h1>{sayLater.logbook.title}</h1>
      {rows.length === 0 && <Empty />}
      <ul class="logbook-rows">
        {rows.map((row) => (
          <Row key={row.runId} row={row} />
        ))}
      </ul>
    </main>
  );
}
