import { signal } from "@preact/signals";
import { cupboard } from "../../pantry.ts";
import { settings } from "../../state.ts";
import { volumeUnit } from "../../words/house-units.ts";
import { sayLater } from "../../words/say-later.ts";
import { NO_JUICE, OWN_ACIDS } from "./juice.ts";
import { JuiceFields } from "./juice-fields.tsx";
import { type PhDraft, readPh } from "./ph.ts";
import type { ReadSum } from "./read-sum.ts";
import { SumField } from "./sum-field.tsx";
import { SumPage } from "./sum-page.tsx";

const { sum, ph: words, juice, names } = sayLater.sums;

const kept = signal<PhDraft>({
  juice: { ...NO_JUICE, juice: "lemon-juice" },
  volume: "",
  total: "",
  strength: "",
  added: NO_JUICE.acids,
});

const edit = (change: Partial<PhDraft>): void => {
  kept.value = { ...kept.value, ...change };
};

function Mix({ read }: { readonly read: ReadSum }) {
  const draft = kept.value;
  const volumes = volumeUnit(settings.value.volumes);
  return (
    <div class="field-pairs">
      <SumField
        read={read}
        of="volume"
        label={sayLater.sums.volumeIn(words.volume, volumes)}
        value={draft.volume}
        onInput={(volume) => edit({ volume })}
      />
      <SumField
        read={read}
        of="total"
        label={sayLater.sums.volumeIn(words.total, volumes)}
        value={draft.total}
        onInput={(total) => edit({ total })}
      />
      <SumField
        read={read}
        of="strength"
        label={words.strength}
        value={draft.strength}
        onInput={(strength) => edit({ strength })}
      />
    </div>
  );
}

function Added({ read }: { readonly read: ReadSum }) {
  const { added } = kept.value;
  return (
    <fieldset class="sums-group">
      <legend>{words.add}</legend>
      <div class="field-pairs">
        {OWN_ACIDS.map((name) => (
          <SumField
            key={name}
            read={read}
            of={`added:${name}`}
            label={names.acid[name]}
            value={added[name]}
            onInput={(text) => edit({ added: { ...added, [name]: text } })}
          />
        ))}
      </div>
    </fieldset>
  );
}

/** The pH of a mix, as a band. */
export function PhSum() {
  const draft = kept.value;
  const read = readPh(draft, cupboard.value, settings.value);
  return (
    <SumPage title={sum.ph.title} read={read}>
      <JuiceFields
        draft={draft.juice}
        read={read}
        pHHint={juice.pHNeeded}
        edit={(change) => edit({ juice: { ...draft.juice, ...change } })}
      />
      <Mix read={read} />
      <Added read={read} />
    </SumPage>
  );
}
