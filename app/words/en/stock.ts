import type { StockEnd, StockUnit } from "../../../core/run/event.ts";

const plain = (count: number): string => String(Math.round(count * 100) / 100);
const counted = (count: number, one: string, many: string): string =>
  `${plain(count)} ${count === 1 ? one : many}`;

const amounts: Readonly<Record<StockUnit, (count: number) => string>> = {
  serves: (count) => counted(count, "serve", "serves"),
  bottles: (count) => counted(count, "bottle", "bottles"),
  ml: (count) => `${plain(count)} ml`,
};

/** What is left of a batch, what went out of it, and how it ended. */
export const stock = {
  amounts,
  ended: (how: StockEnd, reason: string) =>
    `${how === "spent" ? "All gone" : "Discarded"}${reason === "" ? "" : `: ${reason}`}`,
};
