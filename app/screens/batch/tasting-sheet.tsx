import { useState } from "preact/hooks";
import { TASTE_WORDS } from "../../../core/logbook/taste-words.ts";
import { asTag } from "../../../core/run/afterwards.ts";
import { ASPECTS, type Aspect, MOST_SCORE, type Scores } from "../../../core/run/taste.ts";
import { noted } from "../../noted.ts";
import { Field } from "../../parts/field.tsx";
import { HoldButton } from "../../parts/hold-button.tsx";
import { Stepper } from "../../parts/stepper.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { named } from "../../words/joined.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";
import { BLANK, sheetDrafts } from "./sheet-drafts.ts";
import { Who } from "./who.tsx";

/** The first tap lands here, from where every score is five taps away. */
const MIDDLE = MOST_SCORE / 2;
const LONGEST_WORD = 40;
const MOST_WORDS = 24;

interface ScoreProps {
  readonly aspect: Aspect;
  readonly score: number | undefined;
  readonly onScore: (score: number) => void;
}

function Score({ aspect, score, onScore }: ScoreProps) {
  const words = sayLater.tasting;
  const name = words.aspects[aspect];
  const step = (by: number) =>
    onScore(score === undefined ? MIDDLE : Math.min(MOST_SCORE, Math.max(0, score + by)));
  return (
    <Stepper
      label={named(name, words.ends[aspect])}
      shown={score === undefined ? words.notTasted : String(score)}
      lessName={words.less(name)}
      moreName={words.more(name)}
      atLeast={score === 0}
      atMost={score === MOST_SCORE}
      onLess={() => step(-1)}
      onMore={() => step(1)}
    />
  );
}

/** What a word is called: ours in the language of the moment, another as it was typed. */
export const wordShown = (word: string): string =>
  TASTE_WORDS.map((code) => [code, sayLater.tasting.codes[code]] as const).find(
    ([code]) => code === word,
  )?.[1] ?? word;

interface WordsProps {
  readonly chosen: readonly string[];
  readonly onChosen: (words: readonly string[]) => void;
}

function Words({ chosen, onChosen }: WordsProps) {
  const [typed, setTyped] = useState("");
  const words = sayLater.tasting;
  const own = chosen.filter((word) => !TASTE_WORDS.some((code) => code === word));
  const full = chosen.length >= MOST_WORDS;
  const turn = (word: string) =>
    onChosen(chosen.includes(word) ? chosen.filter((one) => one !== word) : [...chosen, word]);
  const add = () => {
    const word = asTag(typed);
    if (word === "" || full) return;
    if (!chosen.includes(word)) onChosen([...chosen, word]);
    setTyped("");
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset takes no flex layout in older Safari
    <div class="batch-words" role="group" aria-label={words.words}>
      <p class="soft">{words.words}</p>
      <div class="batch-chips">
        {[...TASTE_WORDS, ...own].map((word) => {
          const on = chosen.includes(word);
          return (
            <TapButton key={word} pressed={on} disabled={full && !on} onAct={() => turn(word)}>
              {on ? words.chosen(wordShown(word)) : wordShown(word)}
            </TapButton>
          );
        })}
      </div>
      <Field
        label={words.own}
        value={typed}
        longest={LONGEST_WORD}
        onInput={setTyped}
        onEnter={add}
      />
      <TapButton disabled={asTag(typed) === "" || full} onAct={add}>
        {words.addWord}
      </TapButton>
    </div>
  );
}

/** A tasting sheet to be filled in; what is on it stays until it is noted. */
export function TastingSheet(props: { readonly runId: string; readonly onKept: () => void }) {
  const { runId, onKept } = props;
  const [fault, setFault] = useState<string | undefined>(undefined);
  const words = sayLater.tasting;
  const draft = sheetDrafts.keptDraft(runId) ?? BLANK;
  const keep = (change: Partial<typeof draft>) => {
    setFault(undefined);
    sheetDrafts.keepDraft(runId, { ...draft, ...change });
  };
  const score = (aspect: Aspect, value: number) => {
    const scores: Scores = { ...draft.scores, [aspect]: value };
    keep({ scores });
  };
  const note = async () => {
    const { scores, words: said, by = "" } = draft;
    const wrong = await noted(runId, { type: "note-taste", scores, words: said, by }, words.kept);
    setFault(wrong);
    if (wrong !== undefined) return;
    sheetDrafts.dropDraft(runId);
    onKept();
  };
  return (
    <>
      {ASPECTS.map((aspect) => (
        <Score
          key={aspect}
          aspect={aspect}
          score={draft.scores[aspect]}
          onScore={(value) => score(aspect, value)}
        />
      ))}
      <Words chosen={draft.words} onChosen={(said) => keep({ words: said })} />
      <Who who={draft.by} onWho={(by) => keep({ by })} />
      {fault !== undefined && (
        <p class="batch-fault" role="alert">
          {fault}
        </p>
      )}
      <HoldButton
        label={words.keep}
        detail={draft.by === undefined ? undefined : words.keepAs(draft.by)}
        hints={say.work.hints}
        onAct={() => void note()}
      />
    </>
  );
}
