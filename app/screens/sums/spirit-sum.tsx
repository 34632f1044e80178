import { signal } from "@preact/signals";
import { Chips } from "../../parts/chips.tsx";
import { settings } from "../../state.ts";
import { volumeUnit } from "../../words/house-units.ts";
import { sayLater } from "../../words/say-later.ts";
import { type PourDraft, readBlend } from "./blend.ts";
import type { ReadSum } from "./read-sum.ts";
import { type ReduceDraft, readReduction } from "./reduce.ts";
import { SumField } from "./sum-field.tsx";
import { SumPage } from "./sum-page.tsx";

const { sum, spirit: words } = sayLater.sums;
const NO_POUR: PourDraft = { volume: "", strength: "" };

const how = signal<"water" | "blend">("water");
const reduction = signal<ReduceDraft>({ volume: "", now: "", wanted: "", sugar: "" });
const pours = signal<readonly PourDraft[]>([NO_POUR, NO_POUR, NO_POUR]);

const edit = (change: Partial<ReduceDraft>): void => {
  reduction.value = { ...reduction.value, ...change };
};

const editPour = (at: number, change: Partial<PourDraft>): void => {
  pours.value = pours.value.map((pour, index) => (index === at ? { ...pour, ...change } : pour));
};

function Reduce({ read }: { readonly read: ReadSum }) {
  const draft = reduction.value;
  return (
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
        of="now"
        label={words.now}
        value={draft.now}
        onInput={(now) => edit({ now })}
      />
      <SumField
        read={read}
        of="wanted"
        label={words.wanted}
        value={draft.wanted}
        onInput={(wanted) => edit({ wanted })}
      />
      <SumField
        read={read}
        of="sugar"
        label={words.sugar}
        value={draft.sugar}
        hint={words.sugarHint}
        onInput={(sugar) => edit({ sugar })}
      />
    </div>
  );
}

function Pour({ read, at }: { readonly read: ReadSum; readonly at: number }) {
  const { volume, strength } = pours.value[at] ?? NO_POUR;
  return (
    <fieldset class="sums-group">
      <legend>{words.part(at + 1)}</legend>
      <div class="field-pairs">
        <SumField
          read={read}
          of={`volume:${at}`}
          label={sayLater.sums.volumeIn(words.volume, volumeUnit(settings.value.volumes))}
          value={volume}
          hint={at === 2 ? words.third : undefined}
          onInput={(text) => editPour(at, { volume: text })}
        />
        <SumField
          read={read}
          of={`strength:${at}`}
          label={words.strength}
          value={strength}
          onInput={(text) => editPour(at, { strength: text })}
        />
      </div>
    </fieldset>
  );
}

/** Bring a spirit down with water, or blend two or three. */
export function SpiritSum() {
  const reducing = how.value === "water";
  const read = reducing
    ? readReduction(reduction.value, settings.value)
    : readBlend(pours.value, settings.value);
  return (
    <SumPage title={sum.spirit.title} read={read}>
      <Chips
        label={words.how}
        value={how.value}
        onChange={(next) => {
          how.value = next;
        }}
        options={[
          { value: "water", label: words.water },
          { value: "blend", label: words.blend },
        ]}
      />
      {reducing ? (
        <Reduce read={read} />
      ) : (
        pours.value.map((_, at) => <Pour key={words.part(at)} read={read} at={at} />)
      )}
    </SumPage>
  );
}
