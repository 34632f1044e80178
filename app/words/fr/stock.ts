import type { StockUnit } from "../../../core/run/event.ts";
import type * as english from "../en/stock.ts";
import { typed } from "../format.ts";
import type { Spoken } from "../spoken.ts";

const counted = (count: number, one: string, many: string): string =>
  `${typed(count, 2)} ${Math.abs(count) < 2 ? one : many}`;

const amounts: Readonly<Record<StockUnit, (count: number) => string>> = {
  serves: (count) => counted(count, "verre", "verres"),
  bottles: (count) => counted(count, "bouteille", "bouteilles"),
  ml: (count) => `${typed(count, 2)} ml`,
};

export const stock: Spoken<typeof english.stock> = {
  amounts,
  ended: (how, reason) =>
    `${how === "spent" ? "Épuisé" : "Jeté"}${reason === "" ? "" : ` : ${reason}`}`,
};
