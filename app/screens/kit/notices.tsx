import { useState } from "preact/hooks";
import type { NotifyState } from "../../alarm/notify.ts";
import { TapButton } from "../../parts/tap-button.tsx";
import { sayLater } from "../../words/say-later.ts";

interface NoticesProps {
  /** What the phone says of it now. */
  readonly state: NotifyState;
  /** Asks the person; called inside a tap. */
  readonly onAsk: () => Promise<NotifyState>;
}

/** Whether a notice may be shown just after the app was left; nothing is promised of it. */
export function Notices({ state, onAsk }: NoticesProps) {
  const [now, setNow] = useState(state);
  const words = sayLater.kit.notices;
  return (
    <section class="part">
      <h2>{words.title}</h2>
      <p>{words.why}</p>
      <p class="kit-strong">{words.states[now]}</p>
      {now === "unasked" && (
        <TapButton onAct={() => void onAsk().then(setNow)}>{words.ask}</TapButton>
      )}
    </section>
  );
}
