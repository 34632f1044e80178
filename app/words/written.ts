import type { Amount } from "../../core/quantity/amount.ts";
import { HOUR, MINUTE } from "../../core/quantity/time-units-table.ts";
import { typed } from "./format.ts";
import { tongue } from "./tongue.ts";

const FRACTIONS = [
  ["", 0],
  ["¼", 1 / 4],
  ["⅓", 1 / 3],
  ["½", 1 / 2],
  ["⅔", 2 / 3],
  ["¾", 3 / 4],
] as const;

/** "1½" where a jigger would say so, otherwise decimals. */
function cupsText(value: number): string {
  const whole = Math.floor(value + 1e-9);
  const part = FRACTIONS.find(([, size]) => Math.abs(value - whole - size) < 1e-9);
  if (part === undefined) return typed(value, 6);
  return part[0] === "" ? typed(whole) : `${whole === 0 ? "" : whole}${part[0]}`;
}

const METRIC: ReadonlySet<string> = new Set(["ml", "cl", "dl", "l", "g", "kg", "mg"]);
/** An amount as it was written: "45 ml", "1½ oz", "2 dashes". It reads back as the same amount. */
export function asWritten({ value, unit }: Amount): string {
  if (METRIC.has(unit)) return `${typed(value, 6)} ${unit === "l" ? "L" : unit}`;
  return `${cupsText(value)} ${tongue.value.units[unit]?.[value > 1 ? 1 : 0] ?? unit}`;
}

/** A proportion as bars write it: "1 : 4"; a decimal where no small figures say it. */
export function proportion(ratio: number): string {
  for (const [a, b] of [1, 2, 3, 4, 5].map((part) => [part, part / ratio] as const)) {
    const neat = Math.round(b * 100) / 100;
    if (Math.abs(b - neat) < 1e-9) return `${a} : ${typed(neat)}`;
  }
  return typed(ratio, 6);
}

/** A length of time as a person would type it, to read back the same: "36 h", "90 min", "45 s". */
export function typedLength(ms: number): string {
  if (ms % HOUR === 0) return `${ms / HOUR} h`;
  return ms % MINUTE === 0 ? `${ms / MINUTE} min` : `${typed(ms / 1000)} s`;
}
