import { useState } from "preact/hooks";
import { knownInitials } from "../../../core/run/initials.ts";
import { Chips } from "../../parts/chips.tsx";
import { HoldButton } from "../../parts/hold-button.tsx";
import { LetterPad } from "../../parts/letter-pad.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { records } from "../../state.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";

/** As many letters as the log keeps of a name. */
const LONGEST = 8;

function Pad({ onTake, onClose }: { onTake: (name: string) => void; onClose: () => void }) {
  const [name, setName] = useState("");
  const words = sayLater.handOver;
  return (
    <div class="run-pad">
      <LetterPad
        value={name}
        onChange={setName}
        onDone={() => onTake(name)}
        longest={LONGEST}
        words={{
          label: words.whoWatches,
          erase: sayLater.run.erase,
          done: sayLater.run.take,
          hints: say.work.hints,
        }}
      />
      <TapButton tone="quiet" onAct={onClose}>
        {sayLater.run.backToStep}
      </TapButton>
    </div>
  );
}

/** Somebody by initials, who says that they watch it. */
export function Watcher({ onName }: { readonly onName: (who: string) => void }) {
  const [typed, setTyped] = useState<readonly string[]>([]);
  const [who, setWho] = useState<string | null>(null);
  const [typing, setTyping] = useState(false);
  const words = sayLater.handOver;
  const names = [...new Set([...typed, ...knownInitials(records.value)])];
  const take = (name: string) => {
    setTyped([name, ...typed]);
    setWho(name);
    setTyping(false);
  };
  return (
    <>
      {names.length > 0 && (
        <Chips
          label={words.whoWatches}
          options={names.map((name) => ({ value: name, label: name }))}
          value={who}
          onChange={setWho}
        />
      )}
      <TapButton onAct={() => setTyping(true)}>{words.anotherName}</TapButton>
      <HoldButton
        label={who === null ? words.nobody : words.personDone(who)}
        hints={say.work.hints}
        tone="plain"
        size="secondary"
        disabled={who === null}
        onAct={() => who !== null && onName(who)}
      />
      {typing && <Pad onTake={take} onClose={() => setTyping(false)} />}
    </>
  );
}
