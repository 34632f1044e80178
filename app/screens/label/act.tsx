import { useState } from "preact/hooks";
import { copyText } from "../../device/copy.ts";
import { printPage } from "../../device/print.ts";
import { type ShareOutcome, shareFile, shareText } from "../../device/share.ts";
import { pngOf } from "../../label/bitmap.ts";
import type { Drawn, Page } from "../../label/drawn.ts";
import { needsPicture, pdfFile } from "../../label/pdf-file.ts";
import { TapButton } from "../../parts/tap-button.tsx";
import { sayLater } from "../../words/say-later.ts";

interface ActsProps {
  readonly title: string;
  /** A file's name without its ending. */
  readonly file: string;
  readonly text: string;
  /** What is to be printed; nothing where it does not fit its paper. */
  readonly pages: readonly Page[];
}

type Outcome = "shared" | "copied" | "saved" | "neither" | "cannotPrint" | "notDrawn";

async function share(title: string, text: string): Promise<Outcome | undefined> {
  const outcome = await shareText(title, text);
  if (outcome === "shared") return "shared";
  if (outcome === "dismissed") return undefined;
  return (await copyText(text)) ? "copied" : "neither";
}

function outcomeOf(outcome: ShareOutcome): Outcome | undefined {
  if (outcome === "dismissed") return undefined;
  return outcome === "failed" ? "notDrawn" : outcome;
}

async function hand(name: string, made: Promise<Blob | undefined>): Promise<Outcome | undefined> {
  const blob = await made;
  if (blob === undefined) return "notDrawn";
  return outcomeOf(await shareFile({ name, type: blob.type, text: blob }));
}

/** The picture of the first label: another size of bottle has a picture of its own. */
const firstOf = (pages: readonly Page[]): Drawn | undefined => pages[0]?.labels[0]?.label;

/** Printing and sharing, with what came of it said honestly. */
export function Acts({ title, file, text, pages }: ActsProps) {
  const [outcome, setOutcome] = useState<Outcome | undefined>(undefined);
  const words = sayLater.label;
  const first = firstOf(pages);
  const then = (doing: Promise<Outcome | undefined>) =>
    void doing.catch((): Outcome => "notDrawn").then(setOutcome);
  return (
    <>
      <div class="label-print">
        {first !== undefined && (
          <TapButton
            size="primary"
            onAct={() => setOutcome(printPage() ? undefined : "cannotPrint")}
          >
            {words.print}
          </TapButton>
        )}
        {outcome !== undefined && <p role="status">{words[outcome]}</p>}
      </div>
      <section class="label-acts">
        {outcome === "neither" && <pre class="label-text">{text}</pre>}
        {first !== undefined && (
          <>
            <p class="soft">{words.printNote}</p>
            <TapButton onAct={() => then(hand(`${file}.pdf`, pdfFile(title, pages)))}>
              {words.sharePdf}
            </TapButton>
            {needsPicture(first) && <p class="soft">{words.asPicture}</p>}
            <TapButton onAct={() => then(hand(`${file}.png`, pngOf(first)))}>
              {words.sharePng}
            </TapButton>
            <p class="soft">{words.pngNote}</p>
          </>
        )}
        <TapButton onAct={() => then(share(title, text))}>{words.share}</TapButton>
      </section>
    </>
  );
}
