import { routes } from "../routes.ts";
import { sayLater } from "../words/say-later.ts";
import { dayOf, jobName, prep, startWords, waiting } from "./prep.ts";
import { QuietStretch } from "./quiet.tsx";
import "./ahead.css";

const words = sayLater.days;
/** As many as are seen at a glance; the prep list has them all. */
const MOST = 3;

/** Planned batches by when they have to be begun, the soonest first. */
function NextStarts() {
  const ids = new Set(waiting.value.map(({ id }) => id));
  const starts = dayOf(prep.value)
    .latestStart.filter(({ job }) => ids.has(job))
    .toSorted((a, b) => a.startAt - b.startAt)
    .slice(0, MOST);
  if (starts.length === 0) return null;
  return (
    <ul class="ahead-next">
      {starts.map(({ job, startAt }) => (
        <li key={job}>
          <b>{jobName(job)}</b> {startWords(startAt)}
        </li>
      ))}
    </ul>
  );
}

/** What the Bench says of the hours ahead. */
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
    </>
  );
}
