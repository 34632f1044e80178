import { signal } from "@preact/signals";
import { Chips } from "../../parts/chips.tsx";
import { settings } from "../../state.ts";
import { volumeUnit } from "../../words/house-units.ts";
import { sayLater } from "../../words/say-later.ts";
import { SumField } from "./sum-field.tsx";
import { SumPage } from "./sum-page.tsx";
import { RATIOS, readSyrup, SWEETENERS, type SyrupDraft } from "./syrup.ts";

const { sum, syrup: words } = sayLater.sums;

const kept = signal<SyrupDraft>({
  by: "weight",
  of: "sugar",
  ratio: "1 : 1",
  own: "",
  amount: "",
  gum: "",
});

const edit = (change: Partial<SyrupDraft>): void => {
  kept.value = { ...kept.value, ...change };
};

function Kind() {
  const { of, by, ratio } = kept.value;
  return (
    <>
      <Chips
        label={words.of}
        value={of}
        onChange={(next) => edit({ of: next })}
        options={SWEETENERS.map((value) => ({ value, label: words.kinds[value] }))}
      />
      <Chips
        label={words.by}
        value={by}
        onChange={(next) => edit({ by: next })}
        options={[
          { value: "weight", label: words.weight },
          { value: "volume", label: words.volume },
        ]}
      />
      <Chips
        label={words.ratio}
        value={ratio}
        onChange={(next) => edit({ ratio: next })}
        options={RATIOS.map((value) => ({ value, label: value === "own" ? words.own : value }))}
      />
    </>
  );
}

/** A syrup of sugar, honey or gomme. */
export function SyrupSum() {
  const draft = kept.value;
  const read = readSyrup(draft, settings.value);
  const unit = draft.by === "weight" ? "g" : volumeUnit(settings.value.volumes);
  return (
    <SumPage title={sum.syrup.title} read={read}>
      <Kind />
      <div class="field-pairs">
        {draft.ratio === "own" && (
          <SumField
            read={read}
            of="own"
            label={words.ownLabel}
            value={draft.own}
            hint={words.ownHint}
            onInput={(own) => edit({ own })}
            signed
          />
        )}
        <SumField
          read={read}
          of="amount"
          label={sayLater.sums.volumeIn(words.amount[draft.of], unit)}
          value={draft.amount}
          onInput={(amount) => edit({ amount })}
        />
        {draft.of === "gomme" && (
          <SumField
            read={read}
            of="gum"
            label={words.gum}
            value={draft.gum}
            onInput={(gum) => edit({ gum })}
          />
        )}
      </div>
    </SumPage>
  );
}
