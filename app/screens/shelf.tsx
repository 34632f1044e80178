import { type Keeping, type Shelved, shelfOf } from "../../core/board/shelf.ts";
import { LinkButton } from "../parts/link-button.tsx";
import { routes } from "../routes.ts";
import { now, runs, settings } from "../state.ts";
import { dateYear, volume } from "../words/format.ts";
import { sayLater } from "../words/say-later.ts";
import "./shelf.css";

/** A full disc, a half one, a crossed square: told apart by shape alone. */
const MARKS: Readonly<Record<Keeping, string>> = {
  "in-date": "M16 3a13 13 0 1 0 0 26a13 13 0 1 0 0-26z",
  "last-day": "M16 3a13 13 0 1 0 0 26z",
  past: "M6 6L26 26M26 6L6 26",
};

const RING = "M16 3a13 13 0 1 0 0 26a13 13 0 1 0 0-26z";
const FRAME = "M3 3H29V29H3z";

function KeepMark({ keeping }: { readonly keeping: Keeping }) {
  return (
    <svg class="shelf-mark" viewBox="0 0 32 32" aria-hidden="true">
      <path class="shelf-mark-edge" d={keeping === "past" ? FRAME : RING} />
      <path class={keeping === "past" ? "shelf-mark-edge" : "shelf-mark-body"} d={MARKS[keeping]} />
    </svg>
  );
}

function keepingWords({ keeping, daysLeft }: Shelved): string {
  switch (keeping) {
    case "in-date":
      return sayLater.shelf.left(daysLeft);
    case "last-day":
      return sayLater.shelf.lastDay;
    case "past":
      return sayLater.shelf.past;
  }
}

function Content({ row: { bottles, ml } }: { readonly row: Shelved }) {
  const style = settings.value;
  const each = bottles.map(({ count, size }) => sayLater.shelf.bottle(count, volume(size, style)));
  return (
    <p>
      {each.join(", ")}
      <br />
      <span class="shelf-quiet">{sayLater.shelf.all(volume(ml, style))}</span>
    </p>
  );
}

function Row({ row }: { readonly row: Shelved }) {
  const words = sayLater.shelf;
  return (
    <li class="shelf-row" data-keeping={row.keeping}>
      <p class="shelf-keeping">
        <KeepMark keeping={row.keeping} />
        <span class="shelf-words">
          <strong class="shelf-left">{keepingWords(row)}</strong>
          <span>
            {words.useBy(dateYear(row.useBy))}
            {row.keeping === "past" && `, ${words.ago(Math.max(0, -row.daysLeft))}`}
          </span>
        </span>
      </p>
      <h2 class="shelf-name">
        {row.name} <span class="shelf-batch">{row.batch}</span>
      </h2>
      <Content row={row} />
      <p class="shelf-ways">
        <LinkButton href={routes.label(row.runId)} name={words.labelOf(row.batch)}>
          {words.label}
        </LinkButton>
        <LinkButton href={routes.batch(row.runId)} name={words.logOf(row.batch)}>
          {words.log}
        </LinkButton>
      </p>
    </li>
  );
}

/** What is bottled, the earliest use-by first. */
export function ShelfScreen() {
  const words = sayLater.shelf;
  const rows = shelfOf(runs.value, now.value);
  if (rows.length === 0) {
    return (
      <main class="shelf">
        <h1>{words.title}</h1>
        <p class="shelf-empty">{words.empty}</p>
        <LinkButton href={routes.bench}>{words.toBench}</LinkButton>
      </main>
    );
  }
  const past = rows.filter(({ keeping }) => keeping === "past").length;
  return (
    <main class="shelf">
      <header>
        <h1>{words.title}</h1>
        <p class="shelf-quiet">{words.count(rows.length, past)}</p>
      </header>
      <ul class="shelf-rows">
        {rows.map((row) => (
          <Row key={row.runId} row={row} />
        ))}
      </ul>
      <p class="shelf-quiet">{words.note}</p>
    </main>
  );
}
