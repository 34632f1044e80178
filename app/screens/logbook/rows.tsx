import { useEffect, useState } from "preact/hooks";
import type { EndedBatch } from "../../../core/logbook/logbook.ts";
import { atDesk } from "../../desk.ts";
import { TapButton } from "../../parts/tap-button.tsx";
import { routes } from "../../routes.ts";
import { dateYear, percent } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { found } from "./asked.ts";

/** Rows shown before somebody asks for more: more than anybody reads. Judgement. */
const AT_FIRST = 60;
/** What a small phone has in sight; the others are drawn a moment later, so many at a time. */
const IN_SIGHT = 3;

function Row({ row }: { readonly row: EndedBatch }) {
  const words = sayLater.logbook;
  const { yielded, ending, passes, verdict, tags } = row;
  const details = [
    ...(row.demo ? [sayLater.compare.demo] : []),
    ...(verdict === undefined ? [] : [sayLater.tasting.verdicts[verdict]]),
    ...(yielded === undefined ? [] : [words.expected(percent(yielded.expectedShare))]),
    ...(passes === 0 ? [] : [words.passes(passes)]),
    ...tags,
  ];
  return (
    <li>
      <a class="logbook-row" href={routes.batch(row.runId)} data-how={ending.how}>
        <span class="logbook-name">
          {row.name} <span class="logbook-batch">{row.batch}</span>
        </span>
        <strong class="logbook-yield">
          {yielded === undefined ? words.noYield : words.through(percent(yielded.share))}
        </strong>
        <span class="soft">{details.join(", ")}</span>
        <span class="logbook-end">
          {ending.how === "finished" ? words.finished : words.abandoned(ending.reason ?? "")}
          <span class="soft">{dateYear(ending.at)}</span>
        </span>
      </a>
    </li>
  );
}

/** How many of some rows are drawn, and how many are wanted; another list begins anew. */
interface Drawn {
  readonly of: readonly EndedBatch[];
  readonly count: number;
  readonly most: number;
}

/** Rows so far: a screen full at once, the rest a few at a time behind the finger's back. */
function useDrawn(rows: readonly EndedBatch[]): Drawn & { readonly more: () => void } {
  const [state, setState] = useState<Drawn>({ of: rows, count: IN_SIGHT, most: AT_FIRST });
  const drawn = state.of === rows ? state : { of: rows, count: IN_SIGHT, most: AT_FIRST };
  const { count, most } = drawn;
  const waiting = count < Math.min(most, rows.length);
  useEffect(() => {
    if (!waiting) return;
    return atDesk().clock.after(0, () => setState({ of: rows, count: count + IN_SIGHT, most }));
  }, [rows, count, most, waiting]);
  return { ...drawn, more: () => setState({ of: rows, count, most: most + AT_FIRST }) };
}

/** What was found, the latest ended first. */
export function Rows() {
  const rows = found.value;
  const { count, most, more } = useDrawn(rows);
  const left = rows.length - most;
  return (
    <>
      <ul class="logbook-rows">
        {rows.slice(0, Math.min(count, most)).map((row, place) => (
          // By place: a row is rewritten far sooner than a new one is made
          <Row key={place} row={row} />
        ))}
      </ul>
      {left > 0 && <TapButton onAct={more}>{sayLater.logbook.find.more(left)}</TapButton>}
    </>
  );
}
