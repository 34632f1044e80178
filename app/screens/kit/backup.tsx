import { useState } from "preact/hooks";
import { makeBackup } from "../../commands-backup.ts";
import { type SharedFile, type ShareOutcome, saveFile, shareFile } from "../../device/share.ts";
import { TapButton } from "../../parts/tap-button.tsx";
import { now } from "../../state.ts";
import { fileDate } from "../../words/format.ts";
import { sayLater, sentence } from "../../words/say-later.ts";

const fileName = (): string => `second-pour-${fileDate(now.value)}.txt`;

function outcomeWords(outcome: ShareOutcome, name: string): string {
  const words = sayLater.kit.backup;
  switch (outcome) {
    case "shared":
      return words.shared(name);
    case "saved":
      return words.saved(name);
    case "dismissed":
    case "failed":
      return words.dismissed;
  }
}

/** Everything as one file: through the share sheet, or into the browser's downloads. */
export function MakeBackup() {
  const [says, setSays] = useState("");
  const words = sayLater.kit.backup;
  const make = async (hand: (file: SharedFile) => ShareOutcome | Promise<ShareOutcome>) => {
    const made = await makeBackup();
    if (!made.ok) return setSays(sentence(made));
    const file = { name: fileName(), type: "text/plain", text: made.value };
    setSays(outcomeWords(await hand(file), file.name));
  };
  const download = (file: SharedFile): ShareOutcome => {
    saveFile(file);
    return "saved";
  };
  return (
    <section class="kit-part">
      <h2>{words.title}</h2>
      <p>{words.why}</p>
      <TapButton onAct={() => void make(shareFile)}>{words.make}</TapButton>
      <TapButton tone="quiet" onAct={() => void make(download)}>
        {words.download}
      </TapButton>
      <p role="status">{says}</p>
    </section>
  );
}
