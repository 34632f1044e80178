import { pHOf } from "../../../core/acid/charge-balance.ts";
import { molarOf } from "../../../core/acid/molar.ts";
import { ACID_NAMES } from "../../../core/quantity/acid-name.ts";
import { Chips } from "../../parts/chips.tsx";
import { Field } from "../../parts/field.tsx";
import { decimals } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { HAS, OVERPROOF } from "./draft.ts";
import type { FormProps } from "./form.ts";

const words = sayLater.ingredient;

function Sweetness({ draft, edit, faults, insist }: FormProps) {
  const dry = draft.kind === "dry";
  return (
    <>
      {!dry && (
        <Chips
          label={words.sweetAs}
          options={[
            { value: "g/L", label: words.sweetIn["g/L"] },
            { value: "brix", label: words.sweetIn.brix },
          ]}
          value={draft.sweetAs}
          onChange={(sweetAs) => edit({ sweetAs })}
        />
      )}
      <Field
        label={dry ? words.perKilo : draft.sweetAs === "brix" ? words.brix : words.perLitre}
        value={draft.sweet}
        keyboard="decimal"
        narrow
        hint={!dry && draft.sweetAs === "brix" ? words.brixHint : undefined}
        insist={insist}
        fault={faults.get("sweet")}
        onInput={(sweet) => edit({ sweet })}
      />
    </>
  );
}

function Acids({ draft, edit, faults, insist }: FormProps) {
  return (
    <fieldset class="ingredient-acids">
      <legend>{draft.kind === "dry" ? words.acidsDry : words.acids}</legend>
      <div class="field-pairs">
        {ACID_NAMES.map((name) => (
          <Field
            key={name}
            label={words.acid[name]}
            value={draft.acids[name]}
            keyboard="decimal"
            insist={insist}
            fault={faults.get(`acid:${name}`)}
            onInput={(to) => edit({ acids: { ...draft.acids, [name]: to } })}
          />
        ))}
      </div>
    </fieldset>
  );
}

/** pH as these figures give it, where there is acid at all. */
function standingPh({ read }: FormProps): string | undefined {
  const { ingredient } = read;
  if (ingredient === undefined || Object.keys(ingredient.acids).length === 0) return undefined;
  const { acids, cation, strength } = ingredient;
  return words.pHNow(decimals(pHOf({ acids: molarOf(acids), cation, strength }), 1));
}

function Strength({ draft, edit, faults, insist, read }: FormProps) {
  return (
    <>
      <Field
        label={words.strength}
        value={draft.strength}
        keyboard="decimal"
        narrow
        insist={insist}
        fault={faults.get("strength")}
        onInput={(strength) => edit({ strength })}
      />
      {read.ingredient?.cautions.includes(OVERPROOF) && (
        <p class="ingredient-caution">{sayLater.cautions.full(OVERPROOF)}</p>
      )}
    </>
  );
}

function Strained({ draft, edit, faults, insist }: FormProps) {
  return (
    <fieldset class="ingredient-acids">
      <legend>{words.strained}</legend>
      <Field
        label={words.absorbs}
        value={draft.absorbs}
        hint={words.absorbsHint}
        keyboard="decimal"
        narrow
        insist={insist}
        fault={faults.get("absorbs")}
        onInput={(absorbs) => edit({ absorbs })}
      />
      <Field
        label={words.waterShare}
        value={draft.waterShare}
        hint={words.waterShareHint}
        keyboard="decimal"
        narrow
        insist={insist}
        fault={faults.get("waterShare")}
        onInput={(waterShare) => edit({ waterShare })}
      />
    </fieldset>
  );
}

/** What the label, the refractometer and the titration say of it. */
export function FiguresForm(props: FormProps) {
  const { draft, edit, faults, insist, read } = props;
  const has = HAS[draft.kind];
  const whole = faults.get("whole");
  if (!Object.values(has).includes(true)) return null;
  return (
    <section class="ingredient-section">
      <h2>{words.figures}</h2>
      {has.strength && <Strength {...props} />}
      {has.sweet && <Sweetness {...props} />}
      {has.acids && <Acids {...props} />}
      {draft.kind === "dry" && <Strained {...props} />}
      {has.pH && (
        <Field
          label={words.pH}
          value={draft.pH}
          keyboard="decimal"
          narrow
          hint={standingPh(props)}
          insist={insist}
          fault={faults.get("pH")}
          onInput={(pH) => edit({ pH })}
        />
      )}
      {has.density && (
        <Field
          label={words.density}
          value={draft.density}
          keyboard="decimal"
          narrow
          hint={
            read.density === undefined ? undefined : words.densityNow(decimals(read.density, 0))
          }
          insist={insist}
          fault={faults.get("density")}
          onInput={(density) => edit({ density })}
        />
      )}
      {whole !== undefined && (
        <p class="ingredient-fault" role="alert">
          {whole}
        </p>
      )}
    </section>
  );
}
