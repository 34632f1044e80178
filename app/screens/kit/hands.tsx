import { Chips } from "../../parts/chips.tsx";
import { settings } from "../../state.ts";
import { sayLater } from "../../words/say-later.ts";
import { Fault, useChoice } from "./choices.tsx";

/** How the phone is worked: by which hand, through gloves, with water on the glass. */
export function Hands() {
  const { fault, choose } = useChoice();
  const { hand, glove, wetHands } = settings.value;
  const words = sayLater.kit.hands;
  return (
    <section class="part">
      <h2>{words.title}</h2>
      <Chips
        label={words.hand}
        options={[
          { value: "right", label: words.right },
          { value: "left", label: words.left },
        ]}
        value={hand}
        onChange={(next) => void choose({ hand: next })}
      />
      <Chips
        label={words.size}
        options={[
          { value: "finger", label: words.finger },
          { value: "glove", label: words.glove, detail: words.gloveDetail },
        ]}
        value={glove ? "glove" : "finger"}
        onChange={(next) => void choose({ glove: next === "glove" })}
      />
      <Chips
        label={words.wet}
        options={[
          { value: "offer", label: words.offer, detail: words.offerDetail },
          { value: "always", label: words.always },
          { value: "never", label: words.never },
        ]}
        value={wetHands}
        onChange={(next) => void choose({ wetHands: next })}
      />
      <p class="soft">{words.note}</p>
      <Fault fault={fault} />
    </section>
  );
}
