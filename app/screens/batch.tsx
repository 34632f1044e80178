import { endingOf, type Run } from "../../core/run/run.ts";
import { LinkButton } from "../parts/link-button.tsx";
import { routes } from "../routes.ts";
import { logOf, runOf } from "../state.ts";
import { dateYear } from "../words/format.ts";
import { sayLater } from "../words/say-later.ts";
import { Facts } from "./batch/facts.tsx";
import { Log } from "./batch/log.tsx";
import { Note } from "./batch/note.tsx";
import "./batch.css";

function Head({ run }: { readonly run: Run }) {
  const words = sayLater.batch;
  const ending = endingOf(run);
  return (
    <header class="batch-head">
      <h1>
        {run.plan.spec.name} <span class="batch-code">{run.batch}</span>
      </h1>
      <p class="batch-how">
        {ending === undefined && words.running}
        {ending?.how === "finished" && `${sayLater.logbook.finished}, ${dateYear(ending.at)}`}
        {ending?.how === "abandoned" &&
          `${sayLater.logbook.abandoned(run.abandoned?.reason ?? "")}, ${dateYear(ending.at)}`}
      </p>
      <p class="batch-ways">
        {ending === undefined ? (
          <LinkButton href={routes.run(run.id)}>{words.toRun}</LinkButton>
        ) : (
          <LinkButton href={routes.logbook}>{words.back}</LinkButton>
        )}
        <LinkButton href={routes.label(run.id)}>{words.label}</LinkButton>
      </p>
    </header>
  );
}

/** One batch: what it came to, notes, and everything that happened. */
export function BatchScreen({ id }: { readonly id: string }) {
  const run = runOf(id);
  if (run === undefined) {
    return (
      <main class="batch">
        <p class="batch-lost">{sayLater.batch.lost}</p>
        <LinkButton href={routes.logbook}>{sayLater.batch.back}</LinkButton>
      </main>
    );
  }
  return (
    <main class="batch">
      <Head run={run} />
      <Facts run={run} />
      <Note runId={id} />
      <Log run={run} events={logOf(id)} />
    </main>
  );
}
