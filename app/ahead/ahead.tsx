import { useState } from "preact/hooks";
import { HoldButton } from "../parts/hold-button.tsx";
import { LinkButton } from "../parts/link-button.tsx";
import { routes } from "../routes.ts";
import { openRuns } from "../state.ts";
import { say } from "../words/say.ts";
import { sayLater } from "../words/say-later.ts";
import { BackupLine } from "./backup-line.tsx";
import { startPlanned } from "./begin.ts";
import { dayOf, jobName, prep, startWords, waiting } from "./prep.ts";
import { QuietStretch } from "./quiet.tsx";
import "./ahead.css";

const words = sayLater.days;
/** As many as are seen at a glance; the prep list has them all. */
const MOST = 3;

/** The batch that has to be begun first, begun from here. */
function StartNext({ id }: { readonly id: string }) {
  const [fault, setFault] = useState<string>();
  const one = waiting.value.find((other) => other.id === id);
  if (one === undefined) return null;
  return (
    <>
      <HoldButton
        label={words.start(one.plan.spec.name)}
        hints={say.work.hints}
        size="secondary"
        onAct={() => void startPlanned(one).then(setFault)}
      />
      {fault !== undefined && <p role="alert">{fault}</p>}
    </>
  );
}

/** Planned batches by when they have to be begun, the soonest first. */
function NextStarts() {
  const ids = new Set(waiting.value.map(({ id }) => id));
  const starts = dayOf(prep.value)
    .latestStart.filter(({ job }) => ids.has(job))
    .toSorted((a, b) => a.startAt - b.startAt)
    .slice(0, MOST);
  const [first] = starts;
  if (first === undefined) return null;
  return (
    <>
      <StartNext key={first.job} id={first.job} />
      <ul class="ahead-next">
        {starts.map(({ job, startAt }) => (
          <li key={job}>
            <b>{jobName(job)}</b> {startWords(startAt)}
          </li>
        ))}
      </ul>
    </>
  );
}

/** What the Bench says of the hours ahead, and the ways on from it. */
export function Ahead() {
  const trouble = !prep.value.plan.ok;
  return (
    <>
      {trouble && (
        <p class="ahead-say">
          {words.trouble} <a href={routes.days}>{words.see}</a>
        </p>
      )}
      <NextStarts />
      <QuietStretch />
      <LinkButton href={routes.days}>{say.bench.prepList}</LinkButton>
      {openRuns.value.length > 0 && <LinkButton href={routes.specs}>{say.bench.start}</LinkButton>}
      <BackupLine />
    </>
  );
}
