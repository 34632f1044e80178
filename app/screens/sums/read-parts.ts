import { typedNumber } from "../../parts/typed-number.ts";

const LEAST_PARTS = 0.1;
/** Beyond it the tables of sugar in water end. */
const MOST_PARTS = 5;

/** Parts of the sweet one to 1 of water: "3 : 2", "2/1", "1.5". */
export function readParts(text: string): number | undefined {
  const [sweet = "", water = "1", ...rest] = text.split(/[:/]/u);
  const bounds = { low: 0.01, high: 10_000 };
  const [a, b] = [typedNumber(sweet, bounds), typedNumber(water, bounds)];
  if (a === undefined || b === undefined || rest.length > 0) return undefined;
  const parts = a / b;
  return parts >= LEAST_PARTS && parts <= MOST_PARTS ? parts : undefined;
}
