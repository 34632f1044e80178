import { FLASH_POINTS } from "./flash-point-table.ts";

/**
 * Temperature from which the vapour of a spirit can be lit.
 *
 * @param strength - v/v, 0 to 1
 * @returns whole degrees C, rounded down to the safe side; nothing for what is weaker than the table
 * @source flash-point-table.ts, straight between its rows
 * @limits ethanol and water alone: sugar and all else is left out
 * @example
 * flashPoint(0.43) // => 25
 */
export function flashPoint(strength: number): number | undefined {
  let before: (typeof FLASH_POINTS)[number] | undefined;
  for (const row of FLASH_POINTS) {
    if (strength <= row[0]) {
      if (before === undefined) return strength === row[0] ? row[1] : undefined;
      const share = (strength - before[0]) / (row[0] - before[0]);
      return Math.floor(before[1] + share * (row[1] - before[1]));
    }
    before = row;
  }
  return before?.[1];
}
