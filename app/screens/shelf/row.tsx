import { useLayoutEffect, useRef, useState } from "preact/hooks";
import type { Keeping, Shelved } from "../../../core/board/shelf.ts";
import { LinkButton } from "../../parts/link-button.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { routes } from "../../routes.ts";
import { settings } from "../../state.ts";
import { dateYear, volume } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { EndStock } from "./end.tsx";
import { PourOut } from "./pour.tsx";

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

/** What is left, in serves and as a share of what was bottled. */
function Content({ row: { bottles, ml, leftMl, pour } }: { readonly row: Shelved }) {
  const words = sayLater.shelf;
  const show = (amount: number) => volume(amount, settings.value);
  const each = bottles.map(({ count, size }) => words.bottle(count, show(size)));
  return (
    <>
      <p>
        <strong class="shelf-serves">{words.serves(Math.floor(leftMl / pour + 1e-9))}</strong>
        <br />
        {words.of(show(leftMl), show(ml))}
        <br />
        <span class="soft">{each.join(", ")}</span>
      </p>
      <svg class="shelf-bar" viewBox="0 0 100 1" preserveAspectRatio="none" aria-hidden="true">
        <path class="shelf-bar-all" d="M0 .5H100" />
        {leftMl > 0 && <path class="shelf-bar-part" d={`M0 .5H${(100 * leftMl) / ml}`} />}
      </svg>
    </>
  );
}

/** More was logged than there was: what is wrong? */
function Over({ row, onEnd }: { readonly row: Shelved; readonly onEnd: () => void }) {
  const words = sayLater.shelf.over;
  if (row.overMl === 0) return null;
  return (
    <div class="shelf-over" role="alert">
      <p class="shelf-strong">{words.ask(volume(row.overMl, settings.value))}</p>
      <TapButton onAct={onEnd}>{words.gone}</TapButton>
      <LinkButton href={routes.batch(row.runId)}>{words.look}</LinkButton>
    </div>
  );
}

type Form = "pour" | "end";

/** One batch on the shelf: its use-by, what is left, and what becomes of it. */
export function Row({ row }: { readonly row: Shelved }) {
  const [form, setForm] = useState<Form | undefined>(undefined);
  const words = sayLater.shelf;
  const place = useRef<HTMLDivElement>(null);
  // What was opened below the edge of the screen is brought to where it can be worked.
  useLayoutEffect(() => {
    if (form !== undefined) place.current?.scrollIntoView();
  }, [form]);
  const turn = (to: Form) => setForm(form === to ? undefined : to);
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
      <Over row={row} onEnd={() => setForm("end")} />
      <p class="shelf-ways">
        {row.keeping !== "past" && (
          <TapButton
            name={words.pour.open(row.batch)}
            pressed={form === "pour"}
            onAct={() => turn("pour")}
          >
            {words.pour.begin}
          </TapButton>
        )}
        <TapButton
          name={words.end.open(row.batch)}
          pressed={form === "end"}
          onAct={() => turn("end")}
        >
          {words.end.begin}
        </TapButton>
        <LinkButton href={routes.label(row.runId)} name={words.labelOf(row.batch)}>
          {words.label}
        </LinkButton>
        <LinkButton href={routes.batch(row.runId)} name={words.logOf(row.batch)}>
          {words.log}
        </LinkButton>
      </p>
      <div ref={place}>
        {form === "pour" && <PourOut row={row} onDone={() => setForm(undefined)} />}
        {form === "end" && <EndStock row={row} />}
      </div>
    </li>
  );
}
