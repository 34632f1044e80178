import { useState } from "preact/hooks";
import { asInitials } from "../../../core/run/afterwards.ts";
import { knownInitials } from "../../../core/run/initials.ts";
import { Chips } from "../../parts/chips.tsx";
import { LetterPad } from "../../parts/letter-pad.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { records } from "../../state.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";

/** As many letters as the log keeps of a name. */
const LONGEST = 8;

/** Somebody by initials: one of those who were here lately, or others on our own letters. */
export function Who(props: {
  readonly who: string | undefined;
  readonly onWho: (initials: string) => void;
}) {
  const { who, onWho } = props;
  const [typed, setTyped] = useState("");
  const [typing, setTyping] = useState(false);
  const words = sayLater.tasting;
  const known = knownInitials(records.value).map(asInitials);
  const names = [...new Set([...(who === undefined ? [] : [who]), ...known])];
  const take = () => {
    onWho(asInitials(typed));
    setTyping(false);
    setTyped("");
  };
  return (
    <>
      {names.length > 0 && (
        <Chips
          label={words.who}
          options={names.map((name) => ({ value: name, label: name }))}
          value={who ?? null}
          onChange={onWho}
        />
      )}
      {(typing || names.length === 0) && (
        <LetterPad
          value={typed}
          onChange={setTyped}
          onDone={take}
          longest={LONGEST}
          words={{
            label: words.who,
            erase: sayLater.run.erase,
            done: words.padDone,
            hints: say.work.hints,
          }}
        />
      )}
      {names.length > 0 && (
        <TapButton pressed={typing} onAct={() => setTyping(!typing)}>
          {words.another}
        </TapButton>
      )}
    </>
  );
}
