import { useState } from "preact/hooks";
import { noted } from "../../noted.ts";
import { Field } from "../../parts/field.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { sayLater } from "../../words/say-later.ts";

/** Adds a note to a batch, also after it ended. What was typed stays until it is stored. */
export function Note({ runId }: { readonly runId: string }) {
  const [text, setText] = useState("");
  const [fault, setFault] = useState<string | undefined>(undefined);
  const words = sayLater.batch;
  const add = async () => {
    const why = await noted(runId, { type: "add-note", text }, words.noteAdded);
    setFault(why);
    if (why === undefined) setText("");
  };
  return (
    <section class="part">
      <Field
        label={words.note}
        hint={words.noteHint}
        value={text}
        rows={3}
        longest={2000}
        fault={fault}
        insist={fault !== undefined}
        onInput={(typed) => {
          setText(typed);
          setFault(undefined);
        }}
      />
      <TapButton onAct={() => void add()}>{words.addNote}</TapButton>
    </section>
  );
}
