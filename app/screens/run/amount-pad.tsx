import { useState } from "preact/hooks";
import { ounceInMl } from "../../../core/quantity/ounce.ts";
import { NumberPad } from "../../parts/number-pad.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { settings } from "../../state.ts";
import { say } from "../../words/say.ts";
import { sayLater, sentence } from "../../words/say-later.ts";

interface AmountPadProps {
  readonly what: keyof typeof sayLater.run.pads;
  /** Takes ml, or °Brix; answers with a sentence when it is refused. */
  readonly onTake: (ml: number) => Promise<string | undefined>;
  readonly onClose: () => void;
}

/** What a figure is typed in, and how much of the core's own unit that is. */
function unitOf(what: AmountPadProps["what"]): { readonly name: string; readonly size: number } {
  const { volumes, ounce } = settings.value;
  if (what === "brix") return { name: sayLater.run.brixUnit, size: 1 };
  return volumes === "oz"
    ? { name: sayLater.run.ozUnit, size: ounceInMl(ounce) }
    : { name: sayLater.run.unit, size: 1 };
}

/** A wash without these did not happen; of everything else there may be none. */
const NEVER_NONE: readonly string[] = ["milk", "yield"];

/** A figure typed on our own pad: what was typed stays when it is refused. */
export function AmountPad({ what, onTake, onClose }: AmountPadProps) {
  const [value, setValue] = useState("");
  const [fault, setFault] = useState<string | undefined>(undefined);
  const unit = unitOf(what);
  const take = async () => {
    const taken = Number(value) * unit.size;
    const none = taken === 0 && NEVER_NONE.includes(what);
    const refused = none
      ? sentence({ refusal: "amount-not-positive", about: {} })
      : await onTake(taken);
    if (refused === undefined) onClose();
    else setFault(refused);
  };
  return (
    <div class="run-pad">
      <NumberPad
        value={value}
        onChange={(next) => {
          setValue(next);
          setFault(undefined);
        }}
        onDone={() => void take()}
        fault={fault}
        words={{
          label: sayLater.run.pads[what],
          unit: unit.name,
          erase: sayLater.run.erase,
          mark: sayLater.run.mark,
          done: sayLater.run.take,
          hints: say.work.hints,
        }}
      />
      <TapButton tone="quiet" onAct={onClose}>
        {sayLater.run.backToStep}
      </TapButton>
    </div>
  );
}
