import { useEffect, useState } from "preact/hooks";
import { askToKeep, type Keeping, keepingNow } from "../../device/keeping.ts";
import { TapButton } from "../../parts/tap-button.tsx";
import { sayLater } from "../../words/say-later.ts";
import { storageSize } from "../../words/storage-size.ts";
import { PhotoRoom } from "./photo-room.tsx";

const protectedWords = ({ persisted }: Keeping): string => {
  const words = sayLater.kit.keeping;
  if (persisted === undefined) return words.unknown;
  return persisted ? words.yes : words.no;
};

function usedWords({ used, quota }: Keeping): string | undefined {
  if (used === undefined) return undefined;
  const size = storageSize(used);
  return quota === undefined ? size : sayLater.kit.keeping.usedOf(size, storageSize(quota));
}

/** Whether the browser keeps what is stored, and the way to ask it to. */
export function StorageFacts() {
  const [facts, setFacts] = useState<Keeping | undefined>(undefined);
  const [says, setSays] = useState("");
  const words = sayLater.kit.keeping;
  const look = () => void keepingNow().then(setFacts);
  useEffect(look, []);
  const ask = async () => {
    setSays(words.asking);
    const kept = await askToKeep();
    setSays(kept === undefined ? words.cannotAsk : kept ? words.granted : words.refused);
    look();
  };
  const used = facts && usedWords(facts);
  return (
    <section class="part">
      <h2>{words.title}</h2>
      {facts !== undefined && (
        <dl class="kit-facts">
          <dt>{words.protected}</dt>
          <dd>{protectedWords(facts)}</dd>
          {used !== undefined && (
            <>
              <dt>{words.used}</dt>
              <dd>{used}</dd>
            </>
          )}
          <PhotoRoom />
        </dl>
      )}
      {facts !== undefined && facts.persisted !== true && (
        <TapButton onAct={() => void ask()}>{words.ask}</TapButton>
      )}
      <p role="status">{says}</p>
    </section>
  );
}
