/** So many are read before the page gets a turn. */
const AT_ONCE = 5000;

/** A store, in somebody's own transaction. */
interface KeyStore {
  readonly getAllKeys: (after: IDBKeyRange | null, most: number) => Promise<readonly string[]>;
}

/** Every key of a store as it is at one moment: a part at a time, for a quarter of a million freeze a page. */
export async function everyKey(store: KeyStore): Promise<readonly string[]> {
  const all: string[] = [];
  for (;;) {
    const last = all.at(-1);
    const after = last === undefined ? null : IDBKeyRange.lowerBound(last, true);
    const part = await store.getAllKeys(after, AT_ONCE);
    for (const key of part) all.push(key);
    if (part.length < AT_ONCE) return all;
  }
}
