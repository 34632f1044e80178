import { useState } from "preact/hooks";
import type { Shelved } from "../../../core/board/shelf.ts";
import { ounceInMl } from "../../../core/quantity/ounce.ts";
import { STOCK_UNITS, type StockUnit } from "../../../core/run/event.ts";
import { noted } from "../../noted.ts";
import { Chips } from "../../parts/chips.tsx";
import { NumberPad } from "../../parts/number-pad.tsx";
import { settings } from "../../state.ts";
import { decimalMark, volume } from "../../words/format.ts";
import { volumeUnit } from "../../words/house-units.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";

interface PourProps {
  readonly row: Shelved;
  readonly onDone: () => void;
}

const show = (ml: number): string => volume(ml, settings.value);

/** What one of a unit is called on the pad, and how many ml it is. */
function unitOf(unit: StockUnit, { pour, bottles }: Shelved): { name: string; ml: number } {
  const words = sayLater.shelf.pour;
  if (unit === "serves") return { name: words.units.serves, ml: pour };
  if (unit === "bottles") return { name: words.units.bottles, ml: bottles[0]?.size ?? 0 };
  return volumeUnit(settings.value.volumes) === "oz"
    ? { name: sayLater.run.ozUnit, ml: ounceInMl(settings.value.ounce) }
    : { name: sayLater.run.unit, ml: 1 };
}

/** What the figure comes to, and what is left after it; too much is said, not forbidden. */
function noteOf(ml: number, { leftMl, pour }: Shelved): string {
  const words = sayLater.shelf.pour;
  if (ml > leftMl + 1e-6) return words.more(show(ml), show(leftMl));
  return words.leaves(show(ml), Math.floor((leftMl - ml) / pour + 1e-9));
}

/** How much went out of the bottles: in serves after a service, in bottles, or measured. */
export function PourOut({ row, onDone }: PourProps) {
  const [unit, setUnit] = useState<StockUnit>("serves");
  const [value, setValue] = useState("");
  const [fault, setFault] = useState<string | undefined>(undefined);
  const words = sayLater.shelf.pour;
  const mark = decimalMark();
  const figure = Number(value.replace(mark, "."));
  const each = unitOf(unit, row);
  const take = async () => {
    // In the core a measured amount is counted in ml.
    const count = unit === "ml" ? figure * each.ml : figure;
    const said = unit === "ml" ? show(count) : sayLater.stock.amounts[unit](count);
    const wrong = await noted(row.runId, { type: "pour-stock", unit, count }, words.done(said));
    setFault(wrong);
    if (wrong === undefined) onDone();
  };
  return (
    <div class="shelf-form">
      <Chips
        label={words.how}
        options={STOCK_UNITS.map((one) => ({ value: one, label: words.ways[one] }))}
        value={unit}
        onChange={setUnit}
      />
      <NumberPad
        value={value}
        onChange={(next) => {
          setValue(next);
          setFault(undefined);
        }}
        onDone={() => void take()}
        decimalMark={mark}
        fault={fault}
        note={value === "" ? undefined : noteOf(figure * each.ml, row)}
        words={{
          label: words.label(row.batch),
          unit: each.name,
          erase: sayLater.run.erase,
          mark: sayLater.run.mark,
          done: words.take,
          hints: say.work.hints,
        }}
      />
    </div>
  );
}
