import { endingOf, type Run } from "../../core/run/run.ts";
import { LinkButton } from "../parts/link-button.tsx";
import { routes } from "../routes.ts";
import { WhichYield } from "../settle/which-yield.tsx";
import { logOf, runOf } from "../state.ts";
import { dateYear } from "../words/format.ts";
import { sayLater } from "../words/say-later.ts";
import { PlanBeside } from "./batch/beside.tsx";
import { Facts, StepTimes } from "./batch/facts.tsx";
import { Log } from "./batch/log.tsx";
import { Measured } from "./batch/measured.tsx";
import { Note } from "./batch/note.tsx";
import { Photos } from "./batch/photos.tsx";
import { Tags } from "./batch/tags.tsx";
import { Tasting } from "./batch/tasting.tsx";
import { Verdict } from "./batch/verdict.tsx";
import "./batch.css";

const WayBack = () => (
  <LinkButton tone="quiet" href={routes.logbook}>
    {sayLater.batch.back}
  </LinkButton>
);

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
        {ending === undefined && <LinkButton href={routes.run(run.id)}>{words.toRun}</LinkButton>}
        <LinkButton href={routes.label(run.id)}>{words.label}</LinkButton>
        {ending !== undefined && (
          <LinkButton href={routes.compare([run.id])}>{sayLater.compare.withPlan}</LinkButton>
        )}
      </p>
    </header>
  );
}

/** One batch: plan and outcome, what it tasted like, pictures, notes, and everything that happened. */
export function BatchScreen({ id }: { readonly id: string }) {
  const run = runOf(id);
  if (run === undefined) {
    return (
      <main class="batch">
        <WayBack />
        <p class="batch-lost">{sayLater.batch.lost}</p>
      </main>
    );
  }
  return (
    <main class="batch">
      <WayBack />
      <Head run={run} />
      <WhichYield run={run} />
      <Verdict run={run} />
      <Facts run={run} />
      <PlanBeside run={run} />
      <Tasting run={run} />
      <Photos run={run} />
      <Tags run={run} />
      <Note runId={id} />
      <Measured run={run} />
      <StepTimes run={run} />
      <Log run={run} events={logOf(id)} />
    </main>
  );
}
