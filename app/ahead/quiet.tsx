import { workForQuiet } from "../../core/board/schedule/quiet.ts";
import { duration } from "../words/format.ts";
import { sayLater } from "../words/say-later.ts";
import { dayOf, jobName, minute, prep, stepName, whenIs } from "./prep.ts";
import "./quiet.css";

const words = sayLater.days.quiet;

/** The next stretch in which nobody is needed, and what fits into it. */
export function QuietStretch() {
  const { jobs, limits } = prep.value;
  if (jobs.length === 0) return null;
  const { span, work } = workForQuiet(dayOf(prep.value), jobs, limits, minute.value);
  const when =
    span.to === undefined
      ? span.from <= minute.value
        ? words.open
        : words.openFrom(whenIs(span.from))
      : span.from <= minute.value
        ? words.now(whenIs(span.to))
        : words.from(whenIs(span.from), whenIs(span.to));
  return (
    <section class="quiet">
      <h2>{words.title}</h2>
      <p class="quiet-when">{when}</p>
      {work.length > 0 && (
        <>
          <p>{words.could}</p>
          <ul class="quiet-list">
            {work.map(({ job, step, forMs }) => (
              <li key={`${job}/${step}`}>
                {words.task(jobName(job), stepName(job, step), duration(forMs))}
              </li>
            ))}
          </ul>
        </>
      )}
      {work.length === 0 && <p>{words.nothing}</p>}
    </section>
  );
}
