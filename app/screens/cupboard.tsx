import { useState } from "preact/hooks";
import { totalAcid } from "../../core/quantity/acid-name.ts";
import { findIngredients } from "../../core/spec/find-ingredient.ts";
import { INGREDIENT_KINDS, type Ingredient } from "../../core/spec/ingredient.ts";
import { freshId } from "../desk.ts";
import { errandAddress } from "../errand.ts";
import { cupboard, genericOf, isGeneric } from "../pantry.ts";
import { Field } from "../parts/field.tsx";
import { LinkButton } from "../parts/link-button.tsx";
import { SelectField } from "../parts/select-field.tsx";
import { TapButton } from "../parts/tap-button.tsx";
import { routes } from "../routes.ts";
import { ownIngredients } from "../state.ts";
import { typed } from "../words/format.ts";
import { sayLater } from "../words/say-later.ts";
import { withUnit } from "../words/with-unit.ts";
import "./cupboard.css";

const words = sayLater.cupboard;
const ALL = "all";
const choices = () =>
  [
    { value: ALL, label: words.allKinds },
    ...INGREDIENT_KINDS.map((value) => ({ value, label: words.kinds[value] })),
  ] as const;

/** Whose figures they are: the house's own, the house's in place of typical ones, or typical. */
function markOf(ingredient: Ingredient): string | undefined {
  const own = ownIngredients.value.find((one) => one.id === ingredient.id);
  if (own === undefined) return undefined;
  if (genericOf(own.id) === undefined) return words.own;
  return isGeneric(own) ? undefined : words.changed;
}

/** The figures worth a glance: strength, sweetness, acid. */
function figuresOf({ kind, strength, sweetness, acids }: Ingredient): string {
  const per = kind === "dry" ? "g/kg" : "g/L";
  const sweet = sweetness.as === "brix" ? withUnit(typed(sweetness.value), "°Bx") : undefined;
  const sugar = words.figures.sugar(withUnit(typed(sweetness.value), per));
  const acid = totalAcid(acids);
  return [
    strength > 0 && withUnit(typed(strength * 100), "%"),
    sweetness.value > 0 && (sweet ?? sugar),
    acid > 0 && words.figures.acid(withUnit(typed(acid), per)),
  ]
    .filter(Boolean)
    .join(" · ");
}

function Entry({ ingredient }: { readonly ingredient: Ingredient }) {
  const mark = markOf(ingredient);
  return (
    <li>
      <a class="cupboard-entry" href={routes.ingredient(ingredient.id)}>
        <span class="cupboard-name">
          {ingredient.name} {mark && <span class="cupboard-mark">{mark}</span>}
        </span>
        <span class="cupboard-figures">{figuresOf(ingredient)}</span>
      </a>
    </li>
  );
}

function Shelf({ kind, all }: { kind: Ingredient["kind"]; all: readonly Ingredient[] }) {
  const mine = all.filter((one) => one.kind === kind);
  if (mine.length === 0) return null;
  return (
    <section class="cupboard-shelf">
      <h2>{words.kinds[kind]}</h2>
      <ul class="cupboard-list">
        {mine.map((one) => (
          <Entry key={one.id} ingredient={one} />
        ))}
      </ul>
    </section>
  );
}

/** What specs are made of: the house's own entries and the generic ones, by kind. */
export function CupboardScreen() {
  const [looked, setLooked] = useState("");
  const [kind, setKind] = useState<ReturnType<typeof choices>[number]["value"]>(ALL);
  const all = [...cupboard.value.values()];
  const found = looked.trim() === "" ? all : findIngredients(looked, all).candidates;
  const onShelf = found.filter((one) => kind === ALL || one.kind === kind);
  // What was looked for and stands on another shelf is shown all the same.
  const shown = onShelf.length > 0 ? onShelf : found;
  const make = () => {
    location.hash = errandAddress({ ingredientId: freshId(), specKey: "", name: looked.trim() });
  };
  return (
    <main class="cupboard">
      <LinkButton tone="quiet" href={routes.specs}>
        {words.toSpecs}
      </LinkButton>
      <h1>{words.title}</h1>
      <p>{words.lead}</p>
      <LinkButton href={routes.ingredient("new")}>{words.newIngredient}</LinkButton>
      <Field label={words.search} value={looked} keyboard="search" onInput={setLooked} />
      <SelectField label={words.kind} choices={choices()} value={kind} onChange={setKind} />
      {shown.length === 0 && (
        <>
          <p role="status">{words.noneFound(looked)}</p>
          <TapButton onAct={make}>{words.makeIt(looked)}</TapButton>
        </>
      )}
      {INGREDIENT_KINDS.map((one) => (
        <Shelf key={one} kind={one} all={shown} />
      ))}
    </main>
  );
}
