import { kindOf } from "../../core/logbook/learn/house-learning.ts";
import type { BatchRecord } from "../../core/logbook/record.ts";
import { ToMake } from "../ahead/to-make.tsx";
import { DemoHistory } from "../demo/history/asked-for.tsx";
import { LinkButton } from "../parts/link-button.tsx";
import { Why } from "../parts/why.tsx";
import { routes } from "../routes.ts";
import { records, recordsRead } from "../state.ts";
import { decimals } from "../words/format.ts";
import { named } from "../words/joined.ts";
import { say } from "../words/say.ts";
import { sayLater } from "../words/say-later.ts";
import { Kind } from "./learnt/kinds.tsx";
import { Together } from "./learnt/together.tsx";
import { Yields } from "./learnt/yields.tsx";
import "./learnt.css";

interface WorldProps {
  /** Ended washes: the bar's own, or the demo's. */
  readonly batches: readonly BatchRecord[];
}

const latestFirst = (a: BatchRecord, b: BatchRecord): number => b.startedAt - a.startedAt;

/** Each kind of wash with its latest batch, the latest made first. */
function kindsIn(batches: readonly BatchRecord[]): readonly (readonly [string, BatchRecord])[] {
  const kinds = new Map<string, BatchRecord>();
  for (const batch of batches.toSorted(latestFirst)) {
    const kind = kindOf(batch);
    if (kind !== undefined && !kinds.has(kind)) kinds.set(kind, batch);
  }
  return [...kinds];
}

/** What is expected of the next batch, by kind of wash. */
function Kinds({ batches, of }: WorldProps & { readonly of: readonly BatchRecord[] }) {
  const words = sayLater.learnt;
  return (
    <section class="part">
      <h2>{words.kinds}</h2>
      <p>{words.kindsWhy}</p>
      <Why of="range" />
      {kindsIn(of).map(([kind, sample]) => (
        <Kind key={kind} batches={batches} kind={kind} sample={sample} />
      ))}
      <p class="soft-small">{words.source}</p>
    </section>
  );
}

/** The drinks there are batches of, each the way to its own page. */
function Drinks({ batches }: WorldProps) {
  const words = sayLater.learnt;
  const drinks = new Map<string, BatchRecord[]>();
  for (const batch of batches.toSorted(latestFirst)) {
    drinks.set(batch.specId, [...(drinks.get(batch.specId) ?? []), batch]);
  }
  return (
    <section class="part">
      <h2>{words.specs}</h2>
      <ul class="learnt-links">
        {[...drinks].map(([specId, mine]) => (
          <li key={specId}>
            <LinkButton href={routes.learntOf(specId)}>
              {named(mine[0]?.name ?? "", words.specLine(decimals(mine.length, 0)))}
            </LinkButton>
          </li>
        ))}
      </ul>
    </section>
  );
}

function World({ batches }: WorldProps) {
  if (batches.length === 0) return null;
  return (
    <>
      <Kinds batches={batches} of={batches} />
      <Drinks batches={batches} />
    </>
  );
}

/** One drink: its yields in order, what goes together, and what is expected of the next. */
function Drink({ batches, specId }: WorldProps & { readonly specId: string }) {
  const mine = batches.filter((batch) => batch.specId === specId);
  return (
    <>
      <Yields batches={mine} />
      <Together batches={mine} />
      <Kinds batches={batches} of={mine} />
    </>
  );
}

const washesIn = (demo: boolean): readonly BatchRecord[] =>
  records.value.filter(
    (batch) => batch.demo === demo && batch.ending !== undefined && batch.wash !== undefined,
  );

function Everything() {
  const words = sayLater.learnt;
  const [own, invented] = [washesIn(false), washesIn(true)];
  return (
    <>
      <h1>{words.title}</h1>
      {own.length === 0 && (
        <>
          <p class="learnt-empty">{words.none}</p>
          <ToMake />
          {invented.length === 0 && <DemoHistory />}
        </>
      )}
      <World batches={own} />
      {invented.length > 0 && <h2 class="learnt-world">{words.demoTitle}</h2>}
      <World batches={invented} />
    </>
  );
}

/** What a bar's own batches have taught: of every wash, or of one drink. */
export function LearntScreen({ id }: { readonly id: string }) {
  const words = sayLater.learnt;
  const one = records.value.find(({ specId }) => specId === id);
  if (!recordsRead.value) return <p class="app-say">{say.places.loading}</p>;
  return (
    <main class="learnt">
      <LinkButton tone="quiet" href={one === undefined ? routes.logbook : routes.learnt}>
        {one === undefined ? words.back : words.title}
      </LinkButton>
      {one === undefined ? (
        <Everything />
      ) : (
        <>
          <h1>{`${one.name}${one.demo ? ` (${sayLater.compare.demo})` : ""}`}</h1>
          <Drink batches={washesIn(one.demo)} specId={id} />
        </>
      )}
    </main>
  );
}
