import { useState } from "preact/hooks";
import { saveSettings } from "../../commands.ts";
import { Chips } from "../../parts/chips.tsx";
import { settings } from "../../state.ts";
import { sayLater, sentence } from "../../words/say-later.ts";

/** Saves a choice; what could not be saved is said beside it. */
function useChoice() {
  const [fault, setFault] = useState<string | undefined>(undefined);
  const choose = async (change: Parameters<typeof saveSettings>[0]) => {
    const saved = await saveSettings(change);
    setFault(saved.ok ? undefined : sentence(saved));
  };
  return { fault, choose };
}

function Fault({ fault }: { readonly fault: string | undefined }) {
  if (fault === undefined) return null;
  return (
    <p class="kit-fault" role="alert">
      {fault}
    </p>
  );
}

/** Which unit volumes are shown in, and which ounce the house pours. */
export function Units() {
  const { fault, choose } = useChoice();
  const { volumes, ounce } = settings.value;
  const words = sayLater.kit.units;
  return (
    <section class="kit-part">
      <h2>{words.title}</h2>
      <Chips
        label={words.volumes}
        options={[
          { value: "ml", label: words.ml },
          { value: "oz", label: words.oz },
        ]}
        value={volumes}
        onChange={(next) => void choose({ volumes: next })}
      />
      <Chips
        label={words.ounce}
        options={[
          { value: "bar", label: words.bar, detail: words.barDetail },
          { value: "exact", label: words.exact, detail: words.exactDetail },
        ]}
        value={ounce}
        onChange={(next) => void choose({ ounce: next })}
      />
      <p class="kit-quiet">{words.note}</p>
      <Fault fault={fault} />
    </section>
  );
}

/** Dark, light, or as the phone is set. */
export function Theme() {
  const { fault, choose } = useChoice();
  const words = sayLater.kit.theme;
  return (
    <section class="kit-part">
      <h2>{words.title}</h2>
      <Chips
        label={words.label}
        options={[
          { value: "auto", label: words.auto },
          { value: "dark", label: words.dark },
          { value: "light", label: words.light },
        ]}
        value={settings.value.theme}
        onChange={(next) => void choose({ theme: next })}
      />
      <Fault fault={fault} />
    </section>
  );
}
