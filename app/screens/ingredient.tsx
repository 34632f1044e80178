import { useEffect, useRef, useState } from "preact/hooks";
import { DAIRY_KINDS } from "../../core/acid/dairy-kind-table.ts";
import { dairyOf } from "../../core/acid/milk.ts";
import { INGREDIENT_KINDS, type Ingredient } from "../../core/spec/ingredient.ts";
import { dropIngredient, saveIngredient, tell } from "../commands.ts";
import { freshId } from "../desk.ts";
import { errandOf } from "../errand.ts";
import { cupboard, genericOf } from "../pantry.ts";
import { Field } from "../parts/field.tsx";
import { LinkButton } from "../parts/link-button.tsx";
import { SaveBar } from "../parts/save-bar.tsx";
import { SelectField } from "../parts/select-field.tsx";
import { TapButton } from "../parts/tap-button.tsx";
import { routes } from "../routes.ts";
import { sayLater, sentence } from "../words/say-later.ts";
import { DeclareForm, PriceForm } from "./ingredient/declare-form.tsx";
import {
  blankOf,
  type Dairy,
  draftOf,
  dropDraft,
  type IngredientDraft,
  type Kind,
  keepDraft,
  keptDraft,
} from "./ingredient/draft.ts";
import { FiguresForm } from "./ingredient/figures-form.tsx";
import type { FormProps } from "./ingredient/form.ts";
import { readDraft } from "./ingredient/read-draft.ts";
import { changedGeneric, specsWith, WayBack } from "./ingredient/way-back.tsx";
import "./ingredient.css";

const words = sayLater.ingredient;
const NEW = "new";

/** Where the form was come from, and where it goes back to. */
interface Way {
  readonly href: string;
  readonly label: string;
  readonly forSpec: boolean;
}

function wayOf(id: string): Way {
  const specKey = errandOf(id)?.specKey ?? "";
  return specKey === ""
    ? { href: routes.cupboard, label: words.toCupboard, forSpec: false }
    : { href: routes.spec(specKey), label: words.toSpec, forSpec: true };
}

/** After saving: back to whoever waits for it, or on as the ingredient it now is. */
function goOn(id: string, keptAs: string): void {
  const way = wayOf(id);
  if (way.forSpec) location.replace(way.href);
  else if (id !== keptAs) location.replace(routes.ingredient(keptAs));
}

interface FormState {
  readonly id: string;
  readonly stored: Ingredient | undefined;
  readonly draft: IngredientDraft;
}

/** What can be done with the whole form. */
function useActions({ id, stored, draft }: FormState) {
  const [tries, setTries] = useState(0);
  const [refusal, setRefusal] = useState<string>();
  const save = async () => {
    const keptAs = stored?.id ?? errandOf(id)?.ingredientId ?? freshId();
    const { ingredient } = readDraft(draft, keptAs, stored);
    if (ingredient === undefined) {
      setTries(tries + 1);
      return;
    }
    const written = await saveIngredient(ingredient);
    setRefusal(written.ok ? undefined : sentence(written));
    if (!written.ok) return;
    setTries(0);
    // What was typed while it was being stored is not lost.
    if (keptDraft(id) === draft) dropDraft(id);
    goOn(id, ingredient.id);
  };
  /** What the app came with is back; what the house made itself is gone. */
  const remove = async (one: Ingredient, generic: Ingredient | undefined) => {
    const users = generic === undefined ? specsWith(one.id) : [];
    if (users.length > 0) {
      setRefusal(words.inUse(users.join(", ")));
      return;
    }
    const written = await dropIngredient(one.id);
    setRefusal(written.ok ? undefined : sentence(written));
    if (!written.ok) return;
    dropDraft(id);
    tell(generic === undefined ? words.removed(one.name) : words.restored(generic.name));
    if (generic === undefined) location.replace(routes.cupboard);
  };
  const forget = () => {
    dropDraft(id);
    setTries(0);
  };
  return { tries, refusal, save, remove, forget };
}

/** How the form stands against what is stored, in words. */
function standing(stored: Ingredient | undefined, changed: boolean): string {
  if (stored === undefined) return words.notYet;
  if (changed) return words.changed;
  if (genericOf(stored.id) === undefined) return words.saved;
  return changedGeneric(stored.id) === undefined ? words.generic : words.own;
}

/** Choosing a milk ticks the allergen it is known for; unticking it stays possible. */
function withMilk({ allergens }: IngredientDraft, dairy: Dairy): Partial<IngredientDraft> {
  const { allergen } = dairyOf(dairy);
  const known = allergen === null || allergens.includes(allergen);
  return { dairy, allergens: known ? allergens : [...allergens, allergen] };
}

/** What a kind usually brings with it is ticked; unticking it stays possible. */
function asKind(draft: IngredientDraft, kind: Kind): Partial<IngredientDraft> {
  const brings = kind === "dairy" ? "keep-cold" : kind === "juice" ? "fresh-juice" : undefined;
  const known = brings === undefined || draft.cautions.includes(brings);
  const cautions = known ? draft.cautions : [...draft.cautions, brings];
  return { kind, cautions, ...(kind === "dairy" && withMilk(draft, draft.dairy)) };
}

function KindForm({ draft, edit }: FormProps) {
  return (
    <>
      <SelectField
        label={words.kind}
        choices={INGREDIENT_KINDS.map((value) => ({ value, label: words.kinds[value] }))}
        value={draft.kind}
        onChange={(kind) => edit(asKind(draft, kind))}
      />
      {draft.kind === "dairy" && (
        <SelectField
          label={words.dairy}
          hint={words.dairyHint}
          choices={DAIRY_KINDS.map((value) => ({ value, label: words.dairies[value] }))}
          value={draft.dairy}
          onChange={(dairy) => edit(withMilk(draft, dairy))}
        />
      )}
    </>
  );
}

function Form({ id, stored, draft }: FormState) {
  const form = useRef<HTMLElement>(null);
  const actions = useActions({ id, stored, draft });
  const way = wayOf(id);
  const origin = stored === undefined ? blankOf(errandOf(id)?.name ?? "") : draftOf(stored);
  const edit = (change: Partial<IngredientDraft>) => {
    const next = { ...(keptDraft(id) ?? origin), ...change };
    if (JSON.stringify(next) === JSON.stringify(origin)) dropDraft(id);
    else keepDraft(id, next);
  };
  const { tries } = actions;
  useEffect(() => {
    if (tries > 0) form.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
  }, [tries]);
  const read = readDraft(draft, id, stored);
  const { faults } = read;
  const changed = keptDraft(id) !== undefined;
  const props: FormProps = { draft, edit, read, faults, insist: tries > 0 };
  const wrong = tries > 0 && faults.size > 0 ? sayLater.spec.faults(faults.size) : actions.refusal;
  return (
    <main class="ingredient" ref={form}>
      <LinkButton tone="quiet" href={way.href}>
        {way.label}
      </LinkButton>
      <h1>{stored?.name ?? words.newTitle}</h1>
      {way.forSpec && <p>{words.forSpec}</p>}
      <Field
        label={words.name}
        value={draft.name}
        longest={80}
        insist={props.insist}
        fault={faults.get("name")}
        onInput={(name) => edit({ name })}
      />
      <KindForm {...props} />
      <FiguresForm {...props} />
      <DeclareForm {...props} />
      <PriceForm {...props} />
      <WayBack stored={stored} changed={changed && stored !== undefined} actions={actions} />
      <SaveBar says={standing(stored, changed)} wrong={wrong}>
        {(stored === undefined || changed) && (
          <TapButton onAct={() => void actions.save()}>{words.save}</TapButton>
        )}
      </SaveBar>
    </main>
  );
}

/** One ingredient, read and changed; `new`, or an errand, for one that is still to be written. */
export function IngredientScreen({ id }: { readonly id: string }) {
  const errand = errandOf(id);
  // Coming back to the address of an errand that was done shows what it made.
  const stored = cupboard.value.get(errand?.ingredientId ?? id);
  const started = stored === undefined ? undefined : draftOf(stored);
  const blank = id === NEW || errand !== undefined ? blankOf(errand?.name ?? "") : undefined;
  const draft = keptDraft(id) ?? started ?? blank;
  if (draft === undefined) {
    return (
      <main class="ingredient">
        <LinkButton tone="quiet" href={routes.cupboard}>
          {words.toCupboard}
        </LinkButton>
        <p class="ingredient-lost">{words.lost}</p>
      </main>
    );
  }
  return <Form id={id} stored={stored} draft={draft} />;
}
