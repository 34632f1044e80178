import { useEffect, useRef } from "preact/hooks";
import type { Amount } from "../../../core/quantity/amount.ts";
import type { Ingredient } from "../../../core/spec/ingredient.ts";
import type { ReadLine } from "../../../core/spec/ingredient-line.ts";
import { freshId } from "../../desk.ts";
import { errandAddress } from "../../errand.ts";
import { cupboard } from "../../pantry.ts";
import { Field } from "../../parts/field.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { sayLater, sentence } from "../../words/say-later.ts";
import { lineIn } from "../../words/typed-in.ts";
import { asWritten } from "../../words/written.ts";
import type { LineDraft } from "./draft.ts";
import type { FormProps } from "./form.ts";

/** More than these are not read on a phone: type more of the name instead. */
const MOST_OFFERED = 6;

const words = sayLater.spec.add;

interface OffersProps {
  readonly read: ReadLine;
  readonly onPick: (ingredient: Ingredient) => void;
  readonly onMake: () => void;
}

/** What the typed line may mean: the sure one to add, others to choose from, or a new ingredient. */
function Offers({ read, onPick, onMake }: OffersProps) {
  const { sure, candidates } = read.match;
  const others = candidates.filter((one) => one !== sure).slice(0, MOST_OFFERED);
  const amount = asWritten(read.amount);
  return (
    <div class="spec-offers">
      {sure && (
        <div class="spec-main">
          <TapButton onAct={() => onPick(sure)}>{words.act(amount, sure.name)}</TapButton>
        </div>
      )}
      {candidates.length === 0 && <p role="status">{words.unknown(read.named)}</p>}
      {others.length > 0 && <p>{sure ? words.others : words.which(read.named)}</p>}
      {others.map((one) => (
        <TapButton key={one.id} onAct={() => onPick(one)} name={words.act(amount, one.name)}>
          {one.name}
        </TapButton>
      ))}
      <TapButton tone={candidates.length === 0 ? "plain" : "quiet"} onAct={onMake}>
        {words.make(read.named)}
      </TapButton>
    </div>
  );
}

const newLine = (ingredientId: string, amount: Amount): LineDraft => ({
  id: freshId(),
  ingredientId,
  amount: asWritten(amount),
  held: "0",
});

/** A whole line typed at once; what was typed stays until it is added. */
export function AddLine({ draft, edit, faults, insist, specKey }: FormProps & { specKey: string }) {
  const shelf = cupboard.value;
  const text = draft.adding;
  const read = text.trim() === "" ? undefined : lineIn(text, shelf.values());
  const section = useRef<HTMLDivElement>(null);
  const add = (ingredientId: string) => {
    if (!read?.ok) return;
    const lines = [...draft.lines, newLine(ingredientId, read.value.amount)];
    edit({ lines, adding: "", awaiting: "" });
    section.current?.querySelector("input")?.focus();
  };
  const arrived = draft.awaiting !== "" && shelf.has(draft.awaiting);
  useEffect(() => {
    if (!arrived) return;
    add(draft.awaiting);
    section.current?.scrollIntoView({ block: "center" });
  }, [arrived]);
  const make = () => {
    if (!read?.ok) return;
    const ingredientId = freshId();
    edit({ awaiting: ingredientId });
    location.hash = errandAddress({ ingredientId, specKey, name: read.value.named });
  };
  const sure = read?.ok ? read.value.match.sure : undefined;
  return (
    <div class="spec-add" ref={section}>
      <Field
        label={words.label}
        value={text}
        hint={read?.ok ? undefined : words.hint}
        fault={read?.ok === false ? sentence(read) : insist ? faults.get("adding") : undefined}
        insist={insist}
        onInput={(adding) => edit({ adding })}
        onEnter={() => sure && add(sure.id)}
      />
      {read?.ok && <Offers read={read.value} onPick={(one) => add(one.id)} onMake={make} />}
    </div>
  );
}
