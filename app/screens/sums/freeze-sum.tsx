import { signal } from "@preact/signals";
import { settings } from "../../state.ts";
import { sayLater } from "../../words/say-later.ts";
import { type FreezeDraft, readFreeze } from "./freeze.ts";
import { SumField } from "./sum-field.tsx";
import { SumPage } from "./sum-page.tsx";

const { sum, freeze: words } = sayLater.sums;

const kept = signal<FreezeDraft>({ strength: "", sugar: "", temperature: "" });

const edit = (change: Partial<FreezeDraft>): void => {
  kept.value = { ...kept.value, ...change };
};

/** Whether a drink freezes, and what becomes of it. */
export function FreezeSum() {
  const draft = kept.value;
  const read = readFreeze(draft, settings.value);
  return (
    <SumPage title={sum.freeze.title} read={read}>
      <div class="field-pairs">
        <SumField
          read={read}
          of="strength"
          label={words.strength}
          value={draft.strength}
          onInput={(strength) => edit({ strength })}
        />
        <SumField
          read={read}
          of="sugar"
          label={words.sugar}
          value={draft.sugar}
          onInput={(sugar) => edit({ sugar })}
        />
      </div>
      <SumField
        read={read}
        of="temperature"
        label={words.temperature}
        value={draft.temperature}
        onInput={(temperature) => edit({ temperature })}
        signed
      />
    </SumPage>
  );
}
