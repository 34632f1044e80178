import { plainLetters } from "../quantity/plain-letters.ts";

/** Where a name has no letter that ASCII can write. */
const NO_INITIALS = "B";

function initialsOf(name: string): string {
  const words =
    plainLetters(name)
      .replace(/['’]/gu, "")
      .match(/[a-z]+/gu) ?? [];
  const initials = words.slice(0, 3).map((word) => word.charAt(0).toUpperCase());
  return initials.length > 0 ? initials.join("") : NO_INITIALS;
}

/** A batch's name as names are told apart: case and outer spaces do not matter. */
export const plainCode = (code: string): string => code.trim().toUpperCase();

/**
 * A name for a batch that fits on a strip of tape: initials of the spec, day and month, and a
 * number where that name is taken.
 *
 * @param specName - as in the book
 * @param dayMonth - "2511" for the 25th of November
 * @param taken - the batch names in use; case and outer spaces do not matter
 * @returns "PB-2511", then "PB-2511-2" and so on
 * @throws RangeError when `dayMonth` is not four digits
 */
export function batchCode(specName: string, dayMonth: string, taken: readonly string[]): string {
  if (!/^\d{4}$/u.test(dayMonth)) {
    throw new RangeError(`day and month must be four digits, got ${dayMonth}`);
  }
  const used = new Set(taken.map(plainCode));
  const first = `${initialsOf(specName)}-${dayMonth}`;
  if (!used.has(first)) return first;
  let number = 2;
  while (used.has(`${first}-${number}`)) number += 1;
  return `${first}-${number}`;
}
