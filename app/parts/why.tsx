import { useState } from "preact/hooks";
import { later } from "../later.tsx";
import { sayLater } from "../words/say-later.ts";
import { TapButton } from "./tap-button.tsx";
import "./why.css";

/** The questions that a step or a figure raises. */
export type WhyName = keyof typeof sayLater.why;

const Answer = later(async () => (await import("./why-answer.tsx")).Answer);

/** A question where it arises; its answer is fetched when it is asked, and opens as a figure does. */
export function Why({ of }: { readonly of: WhyName }) {
  const [open, setOpen] = useState(false);
  // What could not be fetched says so in its place.
  const ask = () =>
    Answer.fetch().then(
      () => setOpen(true),
      () => setOpen(true),
    );
  return (
    <span class="why">
      <TapButton size="least" tone="quiet" onAct={() => void ask()}>
        {sayLater.why[of]}
      </TapButton>
      {open && <Answer of={of} onClose={() => setOpen(false)} />}
    </span>
  );
}
