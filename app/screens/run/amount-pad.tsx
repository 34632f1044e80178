import { useState } from "preact/hooks";
import { ounceInMl } from "../../../core/quantity/ounce.ts";
import { NumberPad } from "../../parts/number-pad.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { settings } from "../../state.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";

interface AmountPadProps {
  readonly what: keyof typeof sayLater.run.pads;
  /** Takes ml; answers with a sentence when it is refused. */
  readonly onTake: (ml: number) => Promise<string | undefined>;
  readonly onClose: () => void;
}

/** The house's unit in ml. */
const unitMl = (): number =>
  settings.value.volumes === "oz" ? ounceInMl(settings.value.ounce) : 1;

/** A figure typed on our own pad: what was typed stays when it is refused. */
export function AmountPad({ what, onTake, onClose }: AmountPadProps) {
  const [value, setValue] = useState("");
  const [fault, setFault] = useState<string | undefined>(undefined);
  const take = async () => {
    const refused = await onTake(Number(value) * unitMl());
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
          unit: settings.value.volumes === "oz" ? sayLater.run.ozUnit : sayLater.run.unit,
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
