import { useState } from "preact/hooks";
import { ounceInMl } from "../../../core/quantity/ounce.ts";
import { tareOf, vesselOf } from "../../../core/run/weigh.ts";
import { Chips } from "../../parts/chips.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { settings } from "../../state.ts";
import { degreeSign, fromHouse, volumeUnit } from "../../words/house-units.ts";
import { sayLater, sentence } from "../../words/say-later.ts";
import { FigurePad } from "./figure-pad.tsx";
import { type Scale, WeightPad } from "./weight-pad.tsx";

interface AmountPadProps {
  readonly what: keyof typeof sayLater.run.pads;
  /** Takes ml, °Brix or °C; answers with a sentence when it is refused. */
  readonly onTake: (ml: number) => Promise<string | undefined>;
  /** Where it may be weighed instead. */
  readonly scale?: Scale | undefined;
  readonly onClose: () => void;
}

interface TypedUnit {
  readonly name: string;
  /** A figure in the core's own unit. */
  readonly means: (figure: number) => number;
}

const asTyped = (figure: number): number => figure;

/** What a figure is typed in. */
function unitOf(what: AmountPadProps["what"]): TypedUnit {
  const { volumes, ounce } = settings.value;
  if (what === "brix") return { name: sayLater.run.brixUnit, means: asTyped };
  if (what === "temperature") return { name: degreeSign(), means: fromHouse };
  return volumeUnit(volumes) === "oz"
    ? { name: sayLater.run.ozUnit, means: (ounces) => ounces * ounceInMl(ounce) }
    : { name: sayLater.run.unit, means: asTyped };
}

/** A wash without these did not happen; of everything else there may be none. */
const NEVER_NONE: readonly string[] = ["milk", "yield"];

function VolumePad({ what, onTake }: Pick<AmountPadProps, "what" | "onTake">) {
  const unit = unitOf(what);
  const take = async (figure: number) =>
    figure === 0 && NEVER_NONE.includes(what)
      ? sentence({ refusal: "amount-not-positive", about: {} })
      : onTake(unit.means(figure));
  const label = sayLater.run.pads[what];
  return <FigurePad label={label} unit={unit.name} signed={what === "temperature"} onTake={take} />;
}

type How = "volume" | "weight";

/** Who has weighed a vessel of this batch goes on weighing. */
const howAtFirst = (scale: Scale | undefined): How =>
  scale !== undefined && tareOf(scale.run, vesselOf(scale.what)) !== undefined
    ? "weight"
    : "volume";

/** A figure typed on our own pad, as a volume or, where it stands on a scale, as a weight. */
export function AmountPad({ what, onTake, scale, onClose }: AmountPadProps) {
  const [how, setHow] = useState(howAtFirst(scale));
  const words = sayLater.drip.weigh;
  const closing = async (refused: Promise<string | undefined>) => {
    const why = await refused;
    if (why === undefined) onClose();
    return why;
  };
  return (
    <div class="run-pad">
      <div class="run-pad-head">
        <TapButton name={sayLater.run.backToStep} onAct={onClose}>
          {words.backSign}
        </TapButton>
        {scale !== undefined && (
          <Chips
            label={words.how}
            options={[
              { value: "volume", label: words.volume },
              { value: "weight", label: words.weight },
            ]}
            value={how}
            onChange={setHow}
          />
        )}
      </div>
      {scale !== undefined && how === "weight" ? (
        <WeightPad {...scale} onWeigh={(gross) => closing(scale.onWeigh(gross))} />
      ) : (
        <VolumePad what={what} onTake={(ml) => closing(onTake(ml))} />
      )}
    </div>
  );
}
