import { useState } from "preact/hooks";
import { asTag } from "../../../core/run/afterwards.ts";
import { tagsOf } from "../../../core/run/keepsakes.ts";
import type { Run } from "../../../core/run/run.ts";
import { noted } from "../../noted.ts";
import { Field } from "../../parts/field.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { records } from "../../state.ts";
import { sayLater } from "../../words/say-later.ts";

const LONGEST = 40;
/** More chips than these are easier typed than looked for. Judgement. */
const MOST_OFFERED = 8;

/** Tags that other batches carry, the most used first. */
function usedElsewhere(mine: readonly string[]): readonly string[] {
  const counts = new Map<string, number>();
  for (const tag of records.value.flatMap(({ tags }) => tags)) {
    if (!mine.includes(tag)) counts.set(tag, (counts.get(tag) ?? 0) + 1);
  }
  return [...counts]
    .sort(([, a], [, b]) => b - a)
    .slice(0, MOST_OFFERED)
    .map(([tag]) => tag);
}

/** The words that a batch is found by. */
export function Tags({ run }: { readonly run: Run }) {
  const [typed, setTyped] = useState("");
  const [fault, setFault] = useState<string | undefined>(undefined);
  const words = sayLater.tasting.tags;
  const mine = tagsOf(run);
  const used = usedElsewhere(mine);
  const add = async (tag: string) => {
    const wrong = await noted(run.id, { type: "add-tag", tag }, words.added(asTag(tag)));
    setFault(wrong);
    if (wrong === undefined && asTag(tag) === asTag(typed)) setTyped("");
  };
  const takeOff = async (tag: string) =>
    setFault(await noted(run.id, { type: "remove-tag", tag }, words.removed(tag)));
  return (
    <section class="part">
      <h2>{words.title}</h2>
      {mine.length === 0 && <p>{words.none}</p>}
      {mine.length > 0 && (
        <div class="batch-chips">
          {mine.map((tag) => (
            <TapButton key={tag} name={words.takeOff(tag)} onAct={() => void takeOff(tag)}>
              {tag} ×
            </TapButton>
          ))}
        </div>
      )}
      {used.length > 0 && (
        <>
          <p class="soft">{words.used}</p>
          <div class="batch-chips">
            {used.map((tag) => (
              <TapButton key={tag} tone="quiet" onAct={() => void add(tag)}>
                {tag}
              </TapButton>
            ))}
          </div>
        </>
      )}
      <Field
        label={words.field}
        value={typed}
        longest={LONGEST}
        fault={fault}
        insist={fault !== undefined}
        onInput={(text) => {
          setTyped(text);
          setFault(undefined);
        }}
        onEnter={() => void add(typed)}
      />
      <TapButton onAct={() => void add(typed)}>{words.add}</TapButton>
    </section>
  );
}
