import { useState } from "preact/hooks";
import { mayRestart } from "../may-restart.ts";
import { TapButton } from "../parts/tap-button.tsx";
import { pen, takePen } from "../pen.ts";
import { notice, saving, unread, updateWaiting } from "../state.ts";
import type { UpdateOutcome } from "../update.ts";
import { say } from "../words/say.ts";
import "./notices.css";

/** Acting, and the sentence for a refusal, are fetched only then. */
async function takeBack({ runId, act }: { runId: string; act: string }): Promise<void> {
  notice.value = undefined;
  const { perform, tell } = await import("../commands.ts");
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

/** A new version never interrupts: it is offered only while nobody would be sent away from work. */
function Update({ onUpdate }: { readonly onUpdate: () => Promise<UpdateOutcome> }) {
  const [outcome, setOutcome] = useState<UpdateOutcome | undefined>(undefined);
  if (!updateWaiting.value || !mayRestart()) return null;
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

/** Another window writes, or a newer version has: what can be done here. */
function PenLine() {
  const who = pen.value;
  if (who === "newer") return <p class="notices-line">{say.places.newerStorage}</p>;
  if (who !== "elsewhere") return null;
  return (
    <div class="notices-line notices-wide" data-says role="status">
      <span class="notices-text">{say.places.penElsewhere}</span>
      <TapButton onAct={takePen}>{say.places.takePen}</TapButton>
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
      {state.type === "no-room" && (
        <p class="notices-line notices-alert" role="alert">
          {say.places.noRoom}
        </p>
      )}
      <PenLine />
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
