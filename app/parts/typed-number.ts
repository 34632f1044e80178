import { numberIn } from "../words/typed-in.ts";

/** Bounds of a figure, and the words that may follow it; all else makes it no figure. */
export interface Expected {
  readonly low: number;
  readonly high: number;
  readonly units?: readonly string[];
  readonly whole?: boolean;
}

/** Reads a figure as typed, "12,5" and "12.5 %" alike; nothing where it is not one within bounds. */
export function typedNumber(text: string, expected: Expected): number | undefined {
  const lead = numberIn(text);
  if (lead === undefined) return undefined;
  const { low, high, units = [], whole = false } = expected;
  if (lead.rest !== "" && !units.includes(lead.rest.toLowerCase())) return undefined;
  if (!(lead.value >= low && lead.value <= high)) return undefined;
  return whole && !Number.isInteger(lead.value) ? undefined : lead.value;
}
