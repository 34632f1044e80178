import { useState } from "preact/hooks";
import { type Shelved, shelfOf } from "../../core/board/shelf.ts";
import { ToMake } from "../ahead/to-make.tsx";
import { TapButton } from "../parts/tap-button.tsx";
import { now, records, recordsRead } from "../state.ts";
import { say } from "../words/say.ts";
import { sayLater } from "../words/say-later.ts";
import { GoneLately } from "./shelf/gone.tsx";
import { Next } from "./shelf/next.tsx";
import { Row } from "./shelf/row.tsx";
import "./shelf.css";

/** Rows drawn at once; nobody reads more of them standing. Judgement. */
const AT_ONCE = 40;
/** Past its use-by for longer, it is most likely gone and nobody said so, days. Judgement. */
const FORGOTTEN = 14;

const isForgotten = ({ keeping, daysLeft }: Shelved): boolean =>
  keeping === "past" && -daysLeft > FORGOTTEN;

function Rows({ rows }: { readonly rows: readonly Shelved[] }) {
  const [most, setMost] = useState(AT_ONCE);
  const more = rows.length - most;
  return (
    <>
      <ul class="shelf-rows">
        {rows.slice(0, most).map((row) => (
          <Row key={row.runId} row={row} />
        ))}
      </ul>
      {more > 0 && (
        <TapButton onAct={() => setMost(most + AT_ONCE)}>{sayLater.shelf.more(more)}</TapButton>
      )}
    </>
  );
}

/** Batches that nobody took off the shelf long after their use-by. */
function Forgotten({ rows }: { readonly rows: readonly Shelved[] }) {
  const [open, setOpen] = useState(false);
  if (rows.length === 0) return null;
  const words = sayLater.shelf;
  return (
    <section class="part">
      <h2>{words.forgotten.title}</h2>
      <p>{words.forgotten.says(rows.length)}</p>
      <TapButton pressed={open} onAct={() => setOpen(!open)}>
        {open ? words.forgotten.hide : words.forgotten.show}
      </TapButton>
      {open && <Rows rows={rows} />}
    </section>
  );
}

function Empty() {
  return (
    <>
      <p class="shelf-empty">{sayLater.shelf.empty}</p>
      <ToMake />
    </>
  );
}

/** What is bottled, the earliest use-by first, what is left of it, and what to make next. */
export function ShelfScreen() {
  const words = sayLater.shelf;
  const all = shelfOf(records.value, now.value);
  const rows = all.filter((row) => !isForgotten(row));
  const past = all.filter(({ keeping }) => keeping === "past").length;
  const read = recordsRead.value;
  return (
    <main class="shelf">
      <header>
        <h1>{words.title}</h1>
        {all.length > 0 && <p class="soft">{words.count(all.length, past)}</p>}
      </header>
      {all.length === 0 && (read ? <Empty /> : <p class="shelf-empty">{say.places.loading}</p>)}
      <Next />
      <Rows rows={rows} />
      <GoneLately />
      <Forgotten rows={all.filter(isForgotten)} />
      {all.length > 0 && <p class="soft">{words.note}</p>}
    </main>
  );
}
