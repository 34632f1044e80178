import { useState } from "preact/hooks";
import { perform, tell } from "../commands.ts";
import { TapButton } from "../parts/tap-button.tsx";
import { notice, openRuns, saving, unread, updateWaiting } from "../state.ts";
import type { UpdateOutcome } from "../update.ts";
import { say } from "../words/say.ts";
import "./notices.css";

/** A refusal is said as a sentence, which is fetched only then. */
async function takeBack({ runId, act }: { runId: string; act: string }): Promise<void> {
  notice.value = undefined;
  const done = await perform(runId, { type: "undo", act });
  if (!done.ok) tell((await import("../words/say-later.ts")).sentence(done));
}

function Undo() {
  const shown = notice.value;
  if (shown === undefined) return null;
  const { undo } = shown;
  return (
    <div class="notices-line" data-says role="status">
      <span class="notices-text">{shown.text}</span>
      {undo !== undefined && (
        <TapButton size="least" onAct={() => void takeBack(undo)}>
          {say.places.undo}
        </TapButton>
      )}
    </div>
  );
}

/** A new version never interrupts: it is offered only while nothing is being made. */
function Update({ onUpdate }: { readonly onUpdate: () => Promise<UpdateOutcome> }) {
  const [outcome, setOutcome] = useState<UpdateOutcome | undefined>(undefined);
  if (!updateWaiting.value || openRuns.value.length > 0) return null;
  return (
    <div class="notices-line" data-says role="status">
      <span class="notices-text">
        {outcome === "other-window-open" && say.places.updateOther}
        {outcome === "close-and-reopen" && say.places.updateReopen}
        {outcome === undefined && say.places.updateWaiting}
      </span>
      <TapButton onAct={() => void onUpdate().then(setOutcome)}>{say.places.updateNow}</TapButton>
    </div>
  );
}

/** What must be said at the foot of any screen: not saved, take back, new version. */
export function Notices({ onUpdate }: { readonly onUpdate: () => Promise<UpdateOutcome> }) {
  const state = saving.value;
  return (
    <div class="notices">
      {state.type === "not-saved" && (
        <p class="notices-line notices-alert" role="alert">
          {say.places.notSaved(state.why)}
        </p>
      )}
      {unread.value > 0 && (
        <p class="notices-line" data-says>
          {say.places.unread(unread.value)}
        </p>
      )}
      <Undo />
      <Update onUpdate={onUpdate} />
    </div>
  );
}
