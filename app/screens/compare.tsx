import { differencesOf } from "../../core/logbook/compare/differences.ts";
import { sideOf } from "../../core/logbook/compare/inputs.ts";
import { plannedSide } from "../../core/logbook/compare/planned-side.ts";
import type { BatchRecord } from "../../core/logbook/record.ts";
import type { Run } from "../../core/run/run.ts";
import { Logged } from "../logged.tsx";
import { LETTERS } from "../parts/chart-mark.tsx";
import { type Balanced, DrinkBalance } from "../parts/drink-balance.tsx";
import { LinkButton } from "../parts/link-button.tsx";
import { Lettered } from "../parts/sides.tsx";
import { routes } from "../routes.ts";
import { records, recordsRead, runOf } from "../state.ts";
import { dateYear } from "../words/format.ts";
import { say } from "../words/say.ts";
import { sayLater } from "../words/say-later.ts";
import { Differed } from "./compare/differed.tsx";
import { Drips } from "./compare/drips.tsx";
import { Pick } from "./compare/pick.tsx";
import { Stages } from "./compare/stages.tsx";
import "./compare.css";

/** Batches that fit beside each other on a phone. */
const MOST = LETTERS.length;

interface SidesProps {
  readonly sides: readonly {
    readonly name: string;
    readonly href?: string;
    readonly note: string;
  }[];
}

/** What stands behind each letter. */
function Sides({ sides }: SidesProps) {
  return (
    <section class="part" aria-label={sayLater.compare.sides}>
      <Lettered
        sides={sides.map(({ name, href, note }) => (
          <>
            {href === undefined ? <b>{name}</b> : <a href={href}>{name}</a>}{" "}
            <span class="soft-small compare-note">{note}</span>
          </>
        ))}
      />
    </section>
  );
}

function noteOf({ startedAt, demo, verdict }: BatchRecord): string {
  return [
    dateYear(startedAt),
    ...(verdict === undefined ? [] : [sayLater.tasting.verdicts[verdict]]),
    ...(demo ? [sayLater.compare.demo] : []),
  ].join(", ");
}

const nameOf = ({ name, batch }: BatchRecord): string => `${name} ${batch}`;

/** Batches like one: of the same spec, and of the same world. */
const like = (one: BatchRecord): readonly BatchRecord[] =>
  records.value.filter(
    ({ specId, demo, ending }) =>
      specId === one.specId && demo === one.demo && ending !== undefined,
  );

function Balance({ drinks }: { readonly drinks: readonly Balanced[] }) {
  return (
    <section class="part">
      <h2>{sayLater.compare.balance.title}</h2>
      <DrinkBalance drinks={drinks} />
    </section>
  );
}

function WithPlan({ batch, run }: { readonly batch: BatchRecord; readonly run: Run }) {
  const words = sayLater.compare;
  const sides = [plannedSide(run.plan), sideOf(batch)];
  const [planned, name] = [words.plan, nameOf(batch)];
  return (
    <>
      <Sides
        sides={[
          { name: planned, note: "" },
          { name, href: routes.batch(batch.runId), note: noteOf(batch) },
        ]}
      />
      <Differed {...differencesOf(sides, like(batch).map(sideOf))} />
      <Stages run={run} />
      <Balance
        drinks={[
          { name: planned, ...batch.planned },
          { name, ...batch.actual },
        ]}
      />
    </>
  );
}

interface SeveralProps {
  readonly batches: readonly BatchRecord[];
  readonly runs: readonly Run[];
}

function Several({ batches, runs }: SeveralProps) {
  const house = batches.flatMap(like);
  const others = [...new Map(house.map((one) => [one.runId, one])).values()];
  return (
    <>
      <Sides
        sides={batches.map((batch) => ({
          name: nameOf(batch),
          href: routes.batch(batch.runId),
          note: noteOf(batch),
        }))}
      />
      <Differed {...differencesOf(batches.map(sideOf), others.map(sideOf))} />
      <Balance drinks={batches.map((batch) => ({ name: nameOf(batch), ...batch.actual }))} />
      <Drips runs={runs} />
    </>
  );
}

/** Once the logs of all of them are in memory. */
function Compared({ batches }: { readonly batches: readonly BatchRecord[] }) {
  const runs = batches.flatMap(({ runId }) => runOf(runId) ?? []);
  const [batch, another] = batches;
  const [run] = runs;
  if (batch === undefined || run === undefined) return null;
  if (another === undefined) return <WithPlan batch={batch} run={run} />;
  return <Several batches={batches} runs={runs} />;
}

function Loaded({ batches, at = 0 }: { readonly batches: readonly BatchRecord[]; at?: number }) {
  const batch = batches[at];
  if (batch === undefined) return <Compared batches={batches} />;
  return (
    <Logged runId={batch.runId}>
      <Loaded batches={batches} at={at + 1} />
    </Logged>
  );
}

/** Two to four batches side by side, or one beside its plan. */
export function CompareScreen({ id }: { readonly id: string }) {
  const words = sayLater.compare;
  const asked = [...new Set(id.split("~").filter((one) => one !== ""))];
  const shown = asked.slice(0, MOST);
  const batches = shown.flatMap((one) => records.value.find(({ runId }) => runId === one) ?? []);
  const waits = !recordsRead.value && batches.length < shown.length;
  const whole = batches.length === shown.length && shown.length > 0;
  return (
    <main class="compare">
      <LinkButton tone="quiet" href={routes.logbook}>
        {words.back}
      </LinkButton>
      <h1>{words.title}</h1>
      {asked.length > MOST && <p role="status">{words.many}</p>}
      {waits && <p>{say.places.loading}</p>}
      {!waits && shown.length === 0 && <Pick />}
      {!waits && !whole && shown.length > 0 && <p>{words.lost}</p>}
      {whole && <Loaded key={shown.join("~")} batches={batches} />}
    </main>
  );
}
