/**
 * An object's own value under a key: what it inherits does not count.
 *
 * @param value - anything, such as what was stored or sent
 * @returns nothing where it is no object, or has none
 */
export function field(value: unknown, key: string): unknown {
  if (typeof value !== "object" || value === null) return undefined;
  return Object.getOwnPropertyDescriptor(value, key)?.value;
}
