import type { Moved } from "../../../core/board/schedule/moved.ts";
import type { NoPlan, Shortfall } from "../../../core/board/schedule/plan-day.ts";
import { asSeen, dayOf, jobName, prep, stepName, whenIs } from "../../ahead/prep.ts";
import { shortSentence } from "../../ahead/short-sentence.ts";
import { saveSettings } from "../../commands.ts";
import { TapButton } from "../../parts/tap-button.tsx";
import { duration } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";

const words = sayLater.days;

function List({ title, of }: { readonly title: string; readonly of: readonly Shortfall[] }) {
  if (of.length === 0) return null;
  return (
    <>
      <p>{title}</p>
      <ul class="days-list">
        {of.map((one) => (
          <li key={`${one.breaks}/${one.job}`}>{shortSentence(one)}</li>
        ))}
      </ul>
    </>
  );
}

function Broken({ plan }: { readonly plan: NoPlan }) {
  return (
    <section class="days-say" role="alert">
      <p class="days-strong">{shortSentence(plan)}</p>
      <List title={words.breaks.instead} of={plan.instead} />
      <List title={words.breaks.also} of={plan.also} />
      {!plan.proved && <p>{words.breaks.unsure}</p>}
      <p>{words.breaks.least}</p>
    </section>
  );
}

/** That the days do not work out, where they do not. */
export function Trouble() {
  const { plan } = prep.value;
  return plan.ok ? null : <Broken plan={plan} />;
}

/** What moved first of each batch: all that comes after it moved along. */
function firstMoves(): readonly Moved[] {
  const first = new Map<string, Moved>();
  for (const one of prep.value.moved.toSorted((a, b) => a.startAt - b.startAt)) {
    if (!first.has(one.job)) first.set(one.job, one);
  }
  return [...first.values()];
}

/** What is planned for another time than when somebody last looked, and why. */
export function MovedSince() {
  const { placed } = dayOf(prep.value);
  const moved = firstMoves();
  if (moved.length === 0) return null;
  const line = ({ job, step, byMs, startAt, because }: Moved): string => {
    const say = byMs > 0 ? words.moved.later : words.moved.earlier;
    const by = duration(Math.abs(byMs));
    const what = say(jobName(job), stepName(job, step), by, whenIs(startAt));
    const why =
      because === undefined
        ? []
        : [words.moved.because(jobName(because.job), stepName(because.job, because.step))];
    return [what, ...why].join(", ");
  };
  return (
    <section class="days-say" role="status">
      <h2>{words.moved.title}</h2>
      <ul class="days-list">
        {moved.map((one) => (
          <li key={one.job}>{line(one)}</li>
        ))}
      </ul>
      <TapButton onAct={() => void saveSettings(asSeen(placed, prep.value))}>
        {words.moved.seen}
      </TapButton>
    </section>
  );
}
