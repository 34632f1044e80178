import { useState } from "preact/hooks";
import type { BatchRecord } from "../../../core/logbook/record.ts";
import { ToMake } from "../../ahead/to-make.tsx";
import { DemoHistory } from "../../demo/history/asked-for.tsx";
import { LETTERS } from "../../parts/chart-mark.tsx";
import { LinkButton } from "../../parts/link-button.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { routes } from "../../routes.ts";
import { records } from "../../state.ts";
import { dateYear, percent } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";

const MOST = LETTERS.length;
const FEWEST = 2;
/** More rows than anybody looks through before asking for more: judgement. */
const AT_ONCE = 30;

function noteOf({ startedAt, yielded, demo }: BatchRecord): string {
  return [
    dateYear(startedAt),
    ...(yielded === undefined ? [] : [sayLater.logbook.through(percent(yielded.share))]),
    ...(demo ? [sayLater.compare.demo] : []),
  ].join(", ");
}

interface PickedProps {
  readonly picked: readonly string[];
}

/** How many more it takes, or the way to what was chosen. */
function Go({ picked }: PickedProps) {
  const words = sayLater.compare.pick;
  if (picked.length < FEWEST) return <p role="status">{words.more(FEWEST - picked.length)}</p>;
  return (
    <LinkButton tone="main" href={routes.compare(picked)}>
      {words.go(picked.length)}
    </LinkButton>
  );
}

/** Nothing to choose from yet: what will stand here, and the way there. */
function TooFew({ there }: { readonly there: number }) {
  return (
    <>
      <p class="compare-empty">{sayLater.empty.compare(there)}</p>
      <ToMake />
      {there === 0 && <DemoHistory />}
    </>
  );
}

/** Choosing two to four ended batches, the latest first, each with its letter once it is in. */
export function Pick() {
  const [picked, setPicked] = useState<readonly string[]>([]);
  const [most, setMost] = useState(AT_ONCE);
  const words = sayLater.compare.pick;
  const ended = records.value
    .filter(({ ending }) => ending !== undefined)
    .toSorted((a, b) => b.startedAt - a.startedAt);
  if (ended.length < FEWEST) return <TooFew there={ended.length} />;
  const toggle = (id: string) =>
    setPicked(picked.includes(id) ? picked.filter((one) => one !== id) : [...picked, id]);
  return (
    <>
      <p>{sayLater.compare.few}</p>
      <div class="compare-go">
        <Go picked={picked} />
      </div>
      <ul class="compare-picks">
        {ended.slice(0, most).map((batch) => {
          const at = picked.indexOf(batch.runId);
          return (
            <li key={batch.runId}>
              <TapButton
                pressed={at >= 0}
                disabled={at < 0 && picked.length >= MOST}
                onAct={() => toggle(batch.runId)}
              >
                <span>{at < 0 ? "" : `✓ ${LETTERS[at]} `}</span>
                {batch.name} {batch.batch}
                <span class="compare-note">{noteOf(batch)}</span>
              </TapButton>
            </li>
          );
        })}
      </ul>
      {ended.length > most && (
        <TapButton onAct={() => setMost(most + AT_ONCE)}>{words.showMore}</TapButton>
      )}
    </>
  );
}
