import { useState } from "preact/hooks";
import { tastingOf } from "../../../core/logbook/tasting.ts";
import type { Run } from "../../../core/run/run.ts";
import { ASPECTS, MOST_SCORE, type Scores } from "../../../core/run/taste.ts";
import { TapButton } from "../../parts/tap-button.tsx";
import { decimals, stampTime } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { sheetDrafts } from "./sheet-drafts.ts";
import { TastingSheet, wordShown } from "./tasting-sheet.tsx";

/** "7", or "7.5" for a mean between two. */
const scoreText = (score: number): string => decimals(score, Number.isInteger(score) ? 0 : 1);

function Means({ means }: { readonly means: Scores }) {
  const words = sayLater.tasting;
  return (
    <dl>
      {ASPECTS.map((aspect) => {
        const score = means[aspect];
        if (score === undefined) return null;
        return (
          <div class="batch-mean" key={aspect}>
            <dt>{words.aspects[aspect]}</dt>
            <dd>
              <svg
                class="batch-bar"
                viewBox="0 0 10 1"
                preserveAspectRatio="none"
                aria-hidden="true"
              >
                <path class="batch-bar-all" d="M0 .5H10" />
                <path class="batch-bar-part" d={`M0 .5H${(score * 10) / MOST_SCORE}`} />
              </svg>
              <strong>{scoreText(score)}</strong>
            </dd>
          </div>
        );
      })}
    </dl>
  );
}

function Tasted({ run }: { readonly run: Run }) {
  const words = sayLater.tasting;
  const tasting = tastingOf(run);
  if (tasting === undefined) return <p>{words.none}</p>;
  const { tasters, means, words: said } = tasting;
  return (
    <>
      <p class="soft">{words.tasters(tasters.length)}</p>
      <Means means={means} />
      {said.length > 0 && (
        <p>
          {said
            .map(({ word, tasters: n }) => (n > 1 ? `${wordShown(word)} ×${n}` : wordShown(word)))
            .join(", ")}
        </p>
      )}
      <ul class="batch-lines">
        {tasters.map(({ by, at, act }) => (
          <li key={act}>{words.by(by, stampTime(at))}</li>
        ))}
      </ul>
    </>
  );
}

/** What it tasted like, and a sheet for the next taster. */
export function Tasting({ run }: { readonly run: Run }) {
  const [open, setOpen] = useState(sheetDrafts.keptDraft(run.id) !== undefined);
  const words = sayLater.tasting;
  return (
    <section class="part">
      <h2>{words.title}</h2>
      <Tasted run={run} />
      <TapButton pressed={open} onAct={() => setOpen(!open)}>
        {open ? words.close : words.begin}
      </TapButton>
      {open && <TastingSheet runId={run.id} onKept={() => setOpen(false)} />}
    </section>
  );
}
