import { cupboard } from "../../pantry.ts";
import { SelectField } from "../../parts/select-field.tsx";
import { sayLater } from "../../words/say-later.ts";
import { type JuiceDraft, OWN_ACIDS, OWN_JUICE, soursOf } from "./juice.ts";
import type { ReadSum } from "./read-sum.ts";
import { SumField } from "./sum-field.tsx";

const { juice: words, names } = sayLater.sums;

interface JuiceFieldsProps {
  readonly draft: JuiceDraft;
  readonly read: ReadSum;
  readonly edit: (change: Partial<JuiceDraft>) => void;
  readonly pHHint: string;
}

function OwnFigures({ draft, read, edit, pHHint }: JuiceFieldsProps) {
  return (
    <fieldset class="sums-group">
      <legend>{words.acids}</legend>
      <div class="field-pairs">
        {OWN_ACIDS.map((name) => (
          <SumField
            key={name}
            read={read}
            of={name}
            label={names.acid[name]}
            value={draft.acids[name]}
            onInput={(text) => edit({ acids: { ...draft.acids, [name]: text } })}
          />
        ))}
        <SumField
          read={read}
          of="pH"
          label={words.pH}
          value={draft.pH}
          hint={pHHint}
          onInput={(pH) => edit({ pH })}
        />
      </div>
    </fieldset>
  );
}

/** A juice from the cupboard, or its figures typed. */
export function JuiceFields(props: JuiceFieldsProps) {
  const sours = soursOf(cupboard.value);
  const chosen = sours.some(({ id }) => id === props.draft.juice) ? props.draft.juice : OWN_JUICE;
  return (
    <>
      <SelectField
        label={words.label}
        value={chosen}
        choices={[
          ...sours.map(({ id, name }) => ({ value: id, label: name })),
          { value: OWN_JUICE, label: words.own },
        ]}
        onChange={(juice) => props.edit({ juice })}
      />
      {chosen === OWN_JUICE && <OwnFigures {...props} />}
    </>
  );
}
