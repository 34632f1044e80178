import { signal } from "@preact/signals";
import { cupboard } from "../../pantry.ts";
import { Chips } from "../../parts/chips.tsx";
import { settings } from "../../state.ts";
import { volumeUnit } from "../../words/house-units.ts";
import { sayLater } from "../../words/say-later.ts";
import { type AcidDraft, readAcidAdjust } from "./acid.ts";
import { NO_JUICE } from "./juice.ts";
import { JuiceFields } from "./juice-fields.tsx";
import { SumField } from "./sum-field.tsx";
import { SumPage } from "./sum-page.tsx";

const { sum, acid: words, juice } = sayLater.sums;

const kept = signal<AcidDraft>({ juice: NO_JUICE, volume: "", to: "lime" });

const edit = (change: Partial<AcidDraft>): void => {
  kept.value = { ...kept.value, ...change };
};

/** Acid that makes a juice as sour as lemon or lime. */
export function AcidSum() {
  const draft = kept.value;
  const read = readAcidAdjust(draft, cupboard.value, settings.value);
  return (
    <SumPage title={sum.acid.title} read={read}>
      <JuiceFields
        draft={draft.juice}
        read={read}
        pHHint={juice.pHHint}
        edit={(change) => edit({ juice: { ...draft.juice, ...change } })}
      />
      <Chips
        label={words.to}
        value={draft.to}
        onChange={(to) => edit({ to })}
        options={[
          { value: "lemon", label: words.lemon, detail: words.targets.lemon },
          { value: "lime", label: words.lime, detail: words.targets.lime },
        ]}
      />
      <SumField
        read={read}
        of="volume"
        label={sayLater.sums.volumeIn(juice.volume, volumeUnit(settings.value.volumes))}
        value={draft.volume}
        onInput={(volume) => edit({ volume })}
      />
    </SumPage>
  );
}
