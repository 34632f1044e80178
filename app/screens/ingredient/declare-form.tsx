import { ALLERGENS, type Allergen } from "../../../core/spec/allergen-table.ts";
import { CAUTIONS } from "../../../core/spec/caution-table.ts";
import { Field } from "../../parts/field.tsx";
import { SelectField } from "../../parts/select-field.tsx";
import { usePress } from "../../parts/use-press.ts";
import { specs } from "../../state.ts";
import { sayLater } from "../../words/say-later.ts";
import { OVERPROOF } from "./draft.ts";
import type { FormProps } from "./form.ts";

const words = sayLater.ingredient;
/** No spec's id: ids have no space. */
const NOT_MADE = " ";

interface TickProps {
  readonly label: string;
  readonly ticked: boolean;
  readonly onAct: () => void;
}

/** One of several that may all be true; the tick shows without colour. */
function Tick({ label, ticked, onAct }: TickProps) {
  const { pressing, on } = usePress({ kind: "tap", subject: label, onAct });
  return (
    // biome-ignore lint/a11y/useSemanticElements: an input would take taps past the ghost filter
    <button
      type="button"
      class="ingredient-tick"
      role="checkbox"
      aria-checked={ticked}
      data-pressing={pressing}
      {...on}
    >
      <span class="ingredient-box" aria-hidden="true">
        {ticked && "✓"}
      </span>
      <span class="ingredient-tick-words">{label}</span>
    </button>
  );
}

/** In the order of a list, with one turned over; what the list does not know stays. */
const turned = <Value extends string>(
  all: readonly Value[],
  ticked: readonly string[],
  one: Value,
) => [
  ...all.filter((other) => ticked.includes(other) !== (other === one)),
  ...ticked.filter((other) => !all.some((known) => known === other)),
];

function Allergens({ draft, edit }: FormProps) {
  const { allergens } = draft;
  const turn = (one: Allergen) =>
    edit({
      allergens: ALLERGENS.filter((other) => allergens.includes(other) !== (other === one)),
    });
  return (
    <section class="ingredient-section">
      <h2>{words.allergens}</h2>
      <p>{words.allergensHint}</p>
      <div class="ingredient-ticks">
        {ALLERGENS.map((one) => (
          <Tick
            key={one}
            label={words.allergen[one]}
            ticked={allergens.includes(one)}
            onAct={() => turn(one)}
          />
        ))}
      </div>
    </section>
  );
}

/** Cautions that are the person's to tick; that a spirit is overproof follows from its strength. */
const TICKABLE = CAUTIONS.filter((one) => one !== OVERPROOF);

function Cautions({ draft, edit }: FormProps) {
  const { cautions } = draft;
  return (
    <section class="ingredient-section">
      <h2>{words.cautions}</h2>
      <p>{words.cautionsHint}</p>
      <div class="ingredient-ticks" data-wide="true">
        {TICKABLE.map((one) => (
          <Tick
            key={one}
            label={sayLater.cautions.short(one)}
            ticked={cautions.includes(one)}
            onAct={() => edit({ cautions: turned(TICKABLE, cautions, one) })}
          />
        ))}
      </div>
    </section>
  );
}

/** Allergens and cautions that go wherever the ingredient goes. */
export function DeclareForm(props: FormProps) {
  const { draft, edit } = props;
  const book = specs.value.map(({ id, name }) => ({ value: id, label: name }));
  return (
    <>
      <Allergens {...props} />
      {(book.length > 0 || draft.madeFrom !== "") && (
        <SelectField
          label={words.madeFrom}
          hint={words.madeFromHint}
          choices={[{ value: NOT_MADE, label: words.madeFromNone }, ...book]}
          value={draft.madeFrom === "" ? NOT_MADE : draft.madeFrom}
          onChange={(to) => edit({ madeFrom: to === NOT_MADE ? "" : to })}
        />
      )}
      <Cautions {...props} />
    </>
  );
}

/** What the bar pays, where it wants to know a serve's cost. */
export function PriceForm({ draft, edit, faults, insist }: FormProps) {
  return (
    <section class="ingredient-section">
      <h2>{words.price}</h2>
      <p>{words.packHint}</p>
      <div class="field-pairs">
        <Field
          label={words.paid}
          value={draft.paid}
          keyboard="decimal"
          insist={insist}
          fault={faults.get("paid")}
          onInput={(paid) => edit({ paid })}
        />
        <Field
          label={words.pack}
          value={draft.pack}
          insist={insist}
          fault={faults.get("pack")}
          onInput={(pack) => edit({ pack })}
        />
      </div>
    </section>
  );
}
