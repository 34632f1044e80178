import { useState } from "preact/hooks";
import { mayRestart } from "../../may-restart.ts";
import { TapButton } from "../../parts/tap-button.tsx";
import { updateWaiting } from "../../state.ts";
import type { UpdateOutcome } from "../../update.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";

function Waiting({ onUpdate }: { readonly onUpdate: () => Promise<UpdateOutcome> }) {
  const [outcome, setOutcome] = useState<UpdateOutcome | undefined>(undefined);
  const words = sayLater.kit.version;
  const mustWait = !mayRestart();
  return (
    <>
      <p class="kit-strong">{words.waiting}</p>
      {mustWait ? (
        <p>{say.places.updateLater}</p>
      ) : (
        <TapButton onAct={() => void onUpdate().then(setOutcome)}>{words.restart}</TapButton>
      )}
      {outcome === "other-window-open" && <p role="status">{say.places.updateOther}</p>}
      {outcome === "close-and-reopen" && <p role="status">{say.places.updateReopen}</p>}
    </>
  );
}

/** Which version this is, and whether a newer one waits. It never starts by itself. */
export function Version(props: { readonly onUpdate: () => Promise<UpdateOutcome> }) {
  const words = sayLater.kit.version;
  return (
    <section class="part">
      <h2>{words.title}</h2>
      <p>{words.now(__APP_VERSION__)}</p>
      {updateWaiting.value ? <Waiting {...props} /> : <p class="soft">{words.none}</p>}
    </section>
  );
}
