import { useEffect } from "preact/hooks";
import { HoldButton } from "../../parts/hold-button.tsx";
import { wetHands } from "../../state.ts";
import { asksWet, isWet, watchWetHands } from "../../wet-hands.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";

/**
 * Asks whether hands are wet, or offers the way back to everything.
 *
 * @param step - where one giant target is always wanted, the way back lasts until the next step
 */
export function WetHands({ step }: { readonly step: string | undefined }) {
  useEffect(watchWetHands, []);
  useEffect(() => {
    if (wetHands.value.type === "dry-now") wetHands.value = { type: "dry" };
  }, [step]);
  const words = sayLater.run.wet;
  if (isWet.value) {
    return (
      <HoldButton
        label={words.all}
        hints={say.work.hints}
        tone="plain"
        size="secondary"
        onAct={() => {
          wetHands.value = { type: "dry-now" };
        }}
      />
    );
  }
  if (!asksWet.value) return null;
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
