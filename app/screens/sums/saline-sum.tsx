import { signal } from "@preact/signals";
import { settings } from "../../state.ts";
import { volumeUnit } from "../../words/house-units.ts";
import { sayLater } from "../../words/say-later.ts";
import { readSaline, type SalineDraft } from "./saline.ts";
import { SumField } from "./sum-field.tsx";
import { SumPage } from "./sum-page.tsx";

const { sum, saline: words } = sayLater.sums;

/** A fifth by weight is what bars dash from a dropper: common practice, no source. */
const kept = signal<SalineDraft>({ volume: "", percent: "20" });

const edit = (change: Partial<SalineDraft>): void => {
  kept.value = { ...kept.value, ...change };
};

/** Salt and water for a saline. */
export function SalineSum() {
  const draft = kept.value;
  const read = readSaline(draft, settings.value);
  return (
    <SumPage title={sum.saline.title} read={read}>
      <div class="field-pairs">
        <SumField
          read={read}
          of="volume"
          label={sayLater.sums.volumeIn(words.volume, volumeUnit(settings.value.volumes))}
          value={draft.volume}
          onInput={(volume) => edit({ volume })}
        />
        <SumField
          read={read}
          of="percent"
          label={words.percent}
          value={draft.percent}
          onInput={(percent) => edit({ percent })}
        />
      </div>
    </SumPage>
  );
}
