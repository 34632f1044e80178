/** Whether it holds anything under a key. */
export const isObject = (value: unknown): value is object =>
  typeof value === "object" && value !== null;

/** What an object holds; a key without a value is no key. */
const entriesOf = (value: object): readonly (readonly [string, unknown])[] =>
  Object.entries(value).filter(([, held]) => held !== undefined);

function areSameBytes(a: ArrayBuffer, b: ArrayBuffer): boolean {
  const theirs = new Uint8Array(b);
  return (
    a.byteLength === b.byteLength && new Uint8Array(a).every((byte, at) => byte === theirs[at])
  );
}

/** Whether two records say the same, in whatever order. */
export function isSame(a: unknown, b: unknown): boolean {
  if (!isObject(a) || !isObject(b)) return a === b;
  if (a instanceof ArrayBuffer || b instanceof ArrayBuffer) {
    return a instanceof ArrayBuffer && b instanceof ArrayBuffer && areSameBytes(a, b);
  }
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const mine = entriesOf(a);
  const theirs = new Map(entriesOf(b));
  return (
    mine.length === theirs.size &&
    mine.every(([key, held]) => theirs.has(key) && isSame(held, theirs.get(key)))
  );
}
