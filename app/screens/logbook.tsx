import { ToMake } from "../ahead/to-make.tsx";
import { DemoHistory } from "../demo/history/asked-for.tsx";
import { Field } from "../parts/field.tsx";
import { LinkButton } from "../parts/link-button.tsx";
import { TapButton } from "../parts/tap-button.tsx";
import { routes } from "../routes.ts";
import { recordsRead } from "../state.ts";
import { percent } from "../words/format.ts";
import { say } from "../words/say.ts";
import { sayLater } from "../words/say-later.ts";
import { byMerit, ended, filtersOpen, found, rankable, summary, typed } from "./logbook/asked.ts";
import { Filters, Standing } from "./logbook/filters.tsx";
import { useSearch } from "./logbook/make-ready.ts";
import { Rows } from "./logbook/rows.tsx";
import "./logbook.css";
import "./logbook/low.css";

function Empty() {
  return (
    <>
      <p class="logbook-empty">{sayLater.logbook.empty}</p>
      <ToMake />
      <DemoHistory />
    </>
  );
}

/** What is looked for, and the way to more of it. */
function Find() {
  const words = sayLater.logbook.find;
  const open = filtersOpen.value;
  return (
    <>
      <Field
        label={words.label}
        hint={words.hint}
        keyboard="search"
        value={typed.value}
        onInput={(text) => {
          typed.value = text;
        }}
      />
      <div class="logbook-acts">
        {rankable.value && (
          <TapButton
            pressed={byMerit.value}
            onAct={() => {
              byMerit.value = !byMerit.value;
            }}
          >
            {words.bestFirst}
          </TapButton>
        )}
        <TapButton
          pressed={open}
          onAct={() => {
            filtersOpen.value = !open;
          }}
        >
          {open ? words.close : words.open}
        </TapButton>
      </div>
      {open && <Filters />}
      <Standing />
    </>
  );
}

function Summary() {
  const words = sayLater.logbook.find;
  const { batches, share } = summary.value;
  return (
    <p class="logbook-summary" role="status">
      {words.batches(batches)}
      {share !== undefined && `, ${words.median(percent(share.median), share.of)}`}
    </p>
  );
}

/** Batches that ended, the latest or the best first: those that are looked for, or all. */
export function LogbookScreen() {
  useSearch();
  const words = sayLater.logbook;
  const none = ended.value.length === 0;
  return (
    <main class="logbook">
      <h1>{words.title}</h1>
      {none && (recordsRead.value ? <Empty /> : <p class="logbook-empty">{say.places.loading}</p>)}
      {!none && (
        <>
          <p class="logbook-ways">
            <LinkButton href={routes.learnt}>{words.toLearnt}</LinkButton>
            <LinkButton href={routes.compare([])}>{words.toCompare}</LinkButton>
          </p>
          <Find />
          <Summary />
          {found.value.length === 0 && <p class="logbook-empty">{words.find.nothing}</p>}
          <Rows />
        </>
      )}
    </main>
  );
}
