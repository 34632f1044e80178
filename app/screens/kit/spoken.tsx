import { useEffect, useState } from "preact/hooks";
import { onVoices, sayAloud, speechState } from "../../device/speech.ts";
import { Chips } from "../../parts/chips.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { settings } from "../../state.ts";
import { sayLater } from "../../words/say-later.ts";
import { Fault, useChoice } from "./choices.tsx";

/** Whether the step is also said aloud, by a voice that lives on this phone or not at all. */
export function Spoken() {
  const { fault, choose } = useChoice();
  const [state, setState] = useState(speechState);
  useEffect(() => onVoices(() => setState(speechState())), []);
  const words = sayLater.kit.spoken;
  return (
    <section class="part">
      <h2>{words.title}</h2>
      <p>{words.why}</p>
      {state === "ready" ? (
        <>
          <Chips
            label={words.label}
            options={[
              { value: "off", label: words.off },
              { value: "on", label: words.on },
            ]}
            value={settings.value.speak ? "on" : "off"}
            onChange={(next) => void choose({ speak: next === "on" })}
          />
          <TapButton onAct={() => void sayAloud(words.sample)}>{words.tryIt}</TapButton>
        </>
      ) : (
        <p class="kit-strong">{words.states[state]}</p>
      )}
      <Fault fault={fault} />
    </section>
  );
}
