import type { Balance } from "../../core/logbook/balance.ts";
import { abv, decimals } from "../words/format.ts";
import { inOneLine } from "../words/joined.ts";
import { sayLater } from "../words/say-later.ts";
import { withUnit } from "../words/with-unit.ts";
import { BalanceChart } from "./balance-chart.tsx";
import { LETTERS } from "./chart-mark.tsx";

/** A drink on the drawing. */
export interface Balanced extends Balance {
  readonly name: string;
}

const whole = (figure: number): string => decimals(figure, 0);
const tenth = (figure: number): string => decimals(figure, 1);

/** The balance of several drinks on one drawing. */
export function DrinkBalance({ drinks, glass }: { drinks: readonly Balanced[]; glass?: boolean }) {
  const words = sayLater.compare.balance;
  const parts = drinks.map(({ strength, sugar, acid }, at) =>
    words.part(
      LETTERS[at] ?? "",
      abv(strength),
      withUnit(whole(sugar), "g/L"),
      withUnit(tenth(acid), "g/L"),
    ),
  );
  const all = inOneLine(parts);
  const axes = [
    {
      name: words.strength,
      unit: "%",
      figures: drinks.map(({ strength }) => 100 * strength),
      text: tenth,
    },
    { name: words.sugar, unit: "g/L", figures: drinks.map(({ sugar }) => sugar), text: whole },
    { name: words.acid, unit: "g/L", figures: drinks.map(({ acid }) => acid), text: tenth },
    { name: words.ratio, unit: "", figures: drinks.map(({ ratio }) => ratio), text: tenth },
  ];
  const rows = drinks.map(({ name, strength, sugar, acid, ratio }, at) => [
    `${LETTERS[at]} ${name}`,
    abv(strength),
    whole(sugar),
    tenth(acid),
    ratio === undefined ? "–" : tenth(ratio),
  ]);
  return (
    <BalanceChart
      axes={axes}
      sides={drinks.length}
      says={glass === true ? words.saysGlass(all) : words.says(all)}
      reading={words.reading}
      open={sayLater.compare.figures}
      figures={{
        caption: words.title,
        head: [words.name, words.strength, words.sugar, words.acid, words.ratio],
        rows,
      }}
    />
  );
}
