import { computed, signal } from "@preact/signals";
import { Chips } from "../../parts/chips.tsx";
import { settings } from "../../state.ts";
import { degreesTyped } from "../../words/degrees.ts";
import { volumeUnit } from "../../words/house-units.ts";
import { sayLater } from "../../words/say-later.ts";
import { type IceDraft, METHODS, readIce } from "./ice.ts";
import type { ReadSum } from "./read-sum.ts";
import { SumField } from "./sum-field.tsx";
import { SumPage } from "./sum-page.tsx";

const { sum, ice: words } = sayLater.sums;

/** A room, and wet ice, degrees C. */
const [ROOM, WET] = [22, 0];

/** Nothing typed yet is nothing yet: what usually is stands there in the unit of the moment. */
type Typed = Omit<IceDraft, "start" | "iceTemperature"> &
  Partial<Pick<IceDraft, "start" | "iceTemperature">>;

const typedSoFar = signal<Typed>({
  method: "stirred",
  volume: "",
  strength: "",
  sugar: "",
  ice: "",
});

const kept = computed<IceDraft>(() => ({
  start: degreesTyped(ROOM),
  iceTemperature: degreesTyped(WET),
  ...typedSoFar.value,
}));

const edit = (change: Partial<IceDraft>): void => {
  typedSoFar.value = { ...typedSoFar.value, ...change };
};

function Drink({ read }: { readonly read: ReadSum }) {
  const draft = kept.value;
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
      <SumField
        read={read}
        of="start"
        label={words.start}
        value={draft.start}
        onInput={(start) => edit({ start })}
        signed
      />
    </div>
  );
}

function IceItself({ read }: { readonly read: ReadSum }) {
  const { method, ice, iceTemperature } = kept.value;
  if (method === "stirred" || method === "shaken") return null;
  return (
    <div class="field-pairs">
      {method === "blended" && (
        <SumField
          read={read}
          of="ice"
          label={words.ice}
          value={ice}
          onInput={(next) => edit({ ice: next })}
        />
      )}
      <SumField
        read={read}
        of="iceTemperature"
        label={words.iceTemperature}
        value={iceTemperature}
        hint={words.iceHint}
        onInput={(next) => edit({ iceTemperature: next })}
        signed
      />
    </div>
  );
}

/** What ice does to a drink. */
export function IceSum() {
  const read = readIce(kept.value, settings.value);
  return (
    <SumPage title={sum.ice.title} read={read}>
      <Chips
        label={words.method}
        value={kept.value.method}
        onChange={(method) => edit({ method })}
        options={METHODS.map((value) => ({ value, label: words.methods[value] }))}
      />
      <Drink read={read} />
      <IceItself read={read} />
    </SumPage>
  );
}
