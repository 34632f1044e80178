import { type BatchFacts, batchFactsOf } from "../../../core/logbook/batch-facts.ts";
import type { Run } from "../../../core/run/run.ts";
import { settings } from "../../state.ts";
import { dateYear, duration, percent, volume } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { stepName } from "./about.ts";
import { Drip } from "./drip.tsx";

const show = (ml: number): string => volume(ml, settings.value);

function Yield({ facts }: { readonly facts: BatchFacts }) {
  const words = sayLater.batch;
  const { yielded } = facts;
  if (yielded === undefined) return <dd>{words.noYield}</dd>;
  return (
    <dd>
      <strong class="batch-figure">{show(yielded.ml)}</strong>
      <span>{words.share(percent(yielded.share))}</span>
      <span class="soft">
        {words.expected(show(yielded.expectedMl), percent(yielded.expectedShare))}
      </span>
    </dd>
  );
}

function TopUp({ facts }: { readonly facts: BatchFacts }) {
  const { topUp } = facts;
  if (topUp === undefined) return null;
  const words = sayLater.batch;
  const amounts = [
    [words.planned, topUp.planned],
    [words.advised, topUp.advised],
    [words.poured, topUp.ml],
  ] as const;
  return (
    <>
      <dt>{words.topUp}</dt>
      <dd class="batch-three">
        {amounts.map(([word, ml]) => (
          <span key={word}>
            <span class="soft">{word}</span> <strong>{show(ml)}</strong>
          </span>
        ))}
      </dd>
    </>
  );
}

function Bottled({ facts }: { readonly facts: BatchFacts }) {
  const { bottled } = facts;
  if (bottled === undefined) return null;
  const filled = bottled.bottles.map(({ count, size }) => sayLater.shelf.bottle(count, show(size)));
  return (
    <>
      <dt>{sayLater.batch.bottled}</dt>
      <dd>
        <span>{filled.join(", ")}</span>
        <span>{sayLater.batch.useBy(dateYear(bottled.useBy))}</span>
      </dd>
    </>
  );
}

/** How long each step of a batch took. */
export function StepTimes({ run }: { readonly run: Run }) {
  const words = sayLater.batch;
  return (
    <section class="part">
      <h2>{words.steps}</h2>
      <dl>
        {batchFactsOf(run).steps.map(({ visit, took }) => (
          <div class="batch-step" key={visit}>
            <dt>{stepName(run, visit)}</dt>
            <dd>{took === undefined ? words.unfinished : duration(took)}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

/** What a batch came to: yield, top-up, passes, bottles, and its drip. */
export function Facts({ run }: { readonly run: Run }) {
  const words = sayLater.batch;
  const facts = batchFactsOf(run);
  return (
    <>
      <section class="part">
        <h2>{words.facts}</h2>
        <dl class="batch-facts">
          <dt>{words.yield}</dt>
          <Yield facts={facts} />
          <TopUp facts={facts} />
          {facts.passes > 0 && (
            <>
              <dt>{words.passes}</dt>
              <dd>{words.times(facts.passes)}</dd>
            </>
          )}
          <Bottled facts={facts} />
        </dl>
      </section>
      <Drip run={run} />
    </>
  );
}
