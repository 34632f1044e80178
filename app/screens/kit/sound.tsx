import { useState } from "preact/hooks";
import { saveSettings } from "../../commands.ts";
import { LinkButton } from "../../parts/link-button.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { routes } from "../../routes.ts";
import { now, openRuns, settings } from "../../state.ts";
import { dueTime } from "../../words/format.ts";
import { sayLater, sentence } from "../../words/say-later.ts";

type Check =
  | { readonly type: "idle" }
  | { readonly type: "asked" }
  | { readonly type: "heard" }
  | { readonly type: "unheard" }
  | { readonly type: "failed"; readonly why: string };

/** Plays the alarm and asks whether it was heard: only a person can say so. */
export function SoundCheck({ onSoundCheck }: { readonly onSoundCheck: () => void }) {
  const [check, setCheck] = useState<Check>({ type: "idle" });
  const words = sayLater.kit.sound;
  const heardAt = settings.value.soundHeardAt;
  const yes = async () => {
    const saved = await saveSettings({ soundHeardAt: now.value });
    setCheck(saved.ok ? { type: "heard" } : { type: "failed", why: sentence(saved) });
  };
  // What was heard before says nothing about a phone that was just not heard.
  const no = async () => {
    const saved = await saveSettings({ soundHeardAt: 0 });
    setCheck(saved.ok ? { type: "unheard" } : { type: "failed", why: sentence(saved) });
  };
  const play = () => {
    onSoundCheck();
    setCheck({ type: "asked" });
  };
  return (
    <section class="part">
      <h2>{words.title}</h2>
      <p>{words.why}</p>
      <p class="kit-strong">
        {heardAt === 0 ? words.never : words.heard(dueTime(heardAt, now.value))}
      </p>
      <TapButton onAct={play}>{check.type === "idle" ? words.play : words.again}</TapButton>
      {check.type === "asked" && (
        <fieldset class="kit-ask">
          <legend class="kit-strong">{words.ask}</legend>
          <TapButton onAct={() => void yes()}>{words.yes}</TapButton>
          <TapButton onAct={() => void no()}>{words.no}</TapButton>
        </fieldset>
      )}
      {check.type === "heard" && openRuns.value.length > 0 && (
        <LinkButton href={routes.bench}>{words.back}</LinkButton>
      )}
      {check.type === "unheard" && <p role="status">{words.help}</p>}
      {check.type === "failed" && (
        <p class="kit-fault" role="alert">
          {check.why}
        </p>
      )}
    </section>
  );
}
