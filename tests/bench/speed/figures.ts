import { loadavg } from "node:os";

/** What several runs of the same measurement gave. */
export interface Spread {
  readonly median: number;
  readonly least: number;
  readonly most: number;
}

/** The value below which a share of them lies, by nearest rank. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
}

export const spreadOf = (values: readonly number[]): Spread => ({
  median: quantile(values, 0.5),
  least: Math.min(...values),
  most: Math.max(...values),
});

const rounded = (value: number): string =>
  Math.abs(value) >= 100 || Number.isInteger(value) ? value.toFixed(0) : value.toFixed(2);

/** A median with what lay around it: `412 (398 to 470)`. */
export const spread = ({ median, least, most }: Spread): string =>
  `${rounded(median)} (${rounded(least)} to ${rounded(most)})`;

/** How many times as much, against the floor. */
export const times = (value: number, floor: number): string => `${(value / floor).toFixed(2)} x`;

const WIDE = 52;

export const say = (what: string, figure: string): void =>
  console.log(`  ${what.padEnd(WIDE)} ${figure}`);

/** A part of the report, with how busy the machine was: a busy one makes every figure worse. */
export function title(what: string): void {
  const [minute = 0, five = 0] = loadavg();
  console.log(`\n${what}\n  load average ${minute.toFixed(2)} (1 min), ${five.toFixed(2)} (5 min)`);
}

const missed: string[] = [];

/** Says whether a figure keeps to its target; one that does not is named again at the end. */
export function target(what: string, value: number, most: number, unit = "ms"): void {
  const met = value <= most;
  const figure = `${rounded(value)} ${unit}, target at most ${rounded(most)}`;
  say(what, `${figure}: ${met ? "met" : "MISSED"}`);
  if (!met) missed.push(`${what}: ${figure}`);
}

/** The same where more is better. */
export function atLeast(what: string, value: number, least: number): void {
  const met = value >= least;
  const figure = `${rounded(value)}, target at least ${rounded(least)}`;
  say(what, `${figure}: ${met ? "met" : "MISSED"}`);
  if (!met) missed.push(`${what}: ${figure}`);
}

export function closeReport(): void {
  console.log(missed.length === 0 ? "\nevery target met" : "\ntargets missed");
  for (const one of missed) console.log(`  ${one}`);
}
