import { useState } from "preact/hooks";
import { copyText } from "../../device/copy.ts";
import { printPage } from "../../device/print.ts";
import { shareText } from "../../device/share.ts";
import { Chips } from "../../parts/chips.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { sayLater } from "../../words/say-later.ts";

/** What the cards are printed on. */
export type Paper = "roll" | "sheet";

interface ActsProps {
  readonly title: string;
  readonly text: string;
  readonly paper: Paper;
  readonly onPaper: (paper: Paper) => void;
}

type Outcome = "shared" | "copied" | "neither" | "cannotPrint";

async function share(title: string, text: string): Promise<Outcome | undefined> {
  const outcome = await shareText(title, text);
  if (outcome === "shared") return "shared";
  if (outcome === "dismissed") return undefined;
  return (await copyText(text)) ? "copied" : "neither";
}

/** Printing and sharing, with what came of it said honestly. */
export function Acts({ title, text, paper, onPaper }: ActsProps) {
  const [outcome, setOutcome] = useState<Outcome | undefined>(undefined);
  const words = sayLater.label;
  return (
    <section class="label-acts">
      <Chips
        label={words.paper}
        options={[
          { value: "roll", label: words.papers.roll },
          { value: "sheet", label: words.papers.sheet },
        ]}
        value={paper}
        onChange={onPaper}
      />
      <TapButton onAct={() => setOutcome(printPage() ? undefined : "cannotPrint")}>
        {words.print}
      </TapButton>
      <p class="label-quiet">{words.printNote}</p>
      <TapButton onAct={() => void share(title, text).then(setOutcome)}>{words.share}</TapButton>
      {outcome !== undefined && <p role="status">{words[outcome]}</p>}
      {outcome === "neither" && <pre class="label-text">{text}</pre>}
    </section>
  );
}
