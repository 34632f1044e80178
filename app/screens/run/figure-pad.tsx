import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { NumberPad } from "../../parts/number-pad.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { decimalMark } from "../../words/format.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";

interface FigurePadProps {
  readonly label: string;
  readonly unit: string;
  /** What stands there at first; the first key takes its place. */
  readonly start?: string;
  /** What the figure comes to, said while nothing is wrong with it. */
  readonly note?: ((figure: number | undefined) => ComponentChildren) | undefined;
  readonly aside?: ComponentChildren;
  /** It may be below zero: a button beside the figure says so. */
  readonly signed?: boolean;
  /** Takes the figure; answers with a sentence when it is refused. */
  readonly onTake: (figure: number) => Promise<string | undefined>;
}

/** Before a figure below zero. */
const MINUS = "−";

/** A figure typed on our own pad: what was typed stays when it is refused. */
export function FigurePad({
  label,
  unit,
  start = "",
  note,
  aside,
  signed,
  onTake,
}: FigurePadProps) {
  const [value, setValue] = useState(start);
  const [fresh, setFresh] = useState(start !== "");
  const [below, setBelow] = useState(false);
  const [fault, setFault] = useState<string | undefined>(undefined);
  const words = sayLater.run;
  const mark = decimalMark();
  const figure = Number(value.replace(mark, "."));
  return (
    <NumberPad
      value={below ? `${MINUS}${value}` : value}
      onChange={(shown) => {
        const next = shown.replace(MINUS, "");
        const key = next.slice(value.length);
        setValue(fresh ? (key === mark ? `0${mark}` : key) : next);
        setFresh(false);
        if (next === "") setBelow(false);
        setFault(undefined);
      }}
      onDone={() => void onTake(below ? -figure : figure).then(setFault)}
      decimalMark={mark}
      fault={fault}
      aside={
        signed === true ? (
          <TapButton
            name={words.belowName}
            pressed={below}
            disabled={value === ""}
            onAct={() => {
              setBelow(!below);
              setFault(undefined);
            }}
          >
            {words.below}
          </TapButton>
        ) : (
          aside
        )
      }
      note={note?.(value === "" ? undefined : figure)}
      words={{
        label,
        unit,
        erase: words.erase,
        mark: words.mark,
        done: words.take,
        hints: say.work.hints,
      }}
    />
  );
}
