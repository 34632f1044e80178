import { FLASH_POINTS } from "./flash-table.ts";

/** Temperature from which the vapour can be lit, whole degrees C, rounded to the safe side. */
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
