import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import { everyKey } from "../../../../app/storage/backup/keys.ts";

/** A store of so many keys that answers as a database does, and remembers how much it was asked for. */
function storeOf(count: number) {
  const keys = Array.from({ length: count }, (_, at) => `key-${String(at).padStart(6, "0")}`);
  const parts: number[] = [];
  const getAllKeys = (after: IDBKeyRange | null, most: number) => {
    const part = keys.filter((key) => after === null || after.includes(key)).slice(0, most);
    parts.push(part.length);
    return Promise.resolve(part);
  };
  return { keys, parts, getAllKeys };
}

test.each([0, 1, 4999, 5000, 5001, 12_000])(
  "%i keys come once each, in order, in parts",
  async (count) => {
    const store = storeOf(count);
    expect(await everyKey(store)).toEqual(store.keys);
    expect(Math.max(...store.parts)).toBeLessThanOrEqual(5000);
    expect(store.parts.length).toBe(Math.floor(count / 5000) + 1);
  },
);
