import { useEffect, useLayoutEffect } from "preact/hooks";
import { HoldButton } from "../../parts/hold-button.tsx";
import { wetHands } from "../../state.ts";
import { asksWet, watchWetHands } from "../../wet-hands.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";
import "./hands.css";
import "./wet.css";

/** From half as large again the letters leave no room for a foot that stays. Judgement. */
const LARGE = 24;

/** Notes whether somebody has set the phone to large letters. */
function noteLetters(): void {
  const root = document.documentElement;
  const size = Number.parseFloat(getComputedStyle(root).fontSize);
  root.toggleAttribute("data-large", size >= LARGE);
}

/**
 * Asks whether hands are wet, once water is noticed.
 *
 * @param step - where one giant target is always wanted, the way back lasts until the next step
 */
export function AskWet({ step }: { readonly step: string | undefined }) {
  useEffect(watchWetHands, []);
  useLayoutEffect(noteLetters, [step]);
  useEffect(() => {
    if (wetHands.value.type === "dry-now") wetHands.value = { type: "dry" };
  }, [step]);
  if (!asksWet.value) return null;
  const words = sayLater.run.wet;
  return (
    <div class="run-ask-wet" role="status">
      <HoldButton
        label={words.ask}
        detail={words.means}
        hints={say.work.hints}
        tone="plain"
        size="secondary"
        onAct={() => {
          wetHands.value = { type: "wet" };
        }}
      />
    </div>
  );
}

/** The one way from the giant target to everything else. */
export function BackToAll() {
  return (
    <HoldButton
      label={sayLater.run.wet.all}
      hints={say.work.hints}
      tone="plain"
      size="secondary"
      onAct={() => {
        wetHands.value = { type: "dry-now" };
      }}
    />
  );
}
