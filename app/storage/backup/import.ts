import type { Database } from "../database.ts";
import { inOne } from "../in-one.ts";
import { markStale } from "../records.ts";
import { everyKey } from "./keys.ts";
import { type Brought, type Kept, KINDS, STORES, type StoreName } from "./kinds.ts";
import type { Work } from "./pace.ts";

/** What an import came to. */
export interface Added {
  /** Records that were not here. */
  readonly added: number;
  /** Runs whose logs grew. */
  readonly touched: ReadonlySet<string>;
}

/** One store, in the import's own transaction. */
interface Into {
  readonly getAllKeys: Parameters<typeof everyKey>[0]["getAllKeys"];
  readonly add: (record: Kept[StoreName]) => Promise<unknown>;
}

/** Adds to one store what is not in it. Nothing else is waited for: that would end the transaction. */
async function addTo(
  into: Into,
  records: ReadonlyMap<string, Kept[StoreName]>,
  atOnce: number,
  onSome: (some: readonly Kept[StoreName][]) => void,
): Promise<void> {
  if (records.size === 0) return;
  const here = new Set(await everyKey(into));
  const fresh = [...records.values()].filter(({ id }) => !here.has(id));
  for (let at = 0; at < fresh.length; at += atOnce) {
    const some = fresh.slice(at, at + atOnce);
    await Promise.all(some.map((record) => into.add(record)));
    onSome(some);
  }
}

/**
 * Adds what a backup brings to what is stored, in one transaction, flushed to disk: only what has an
 * id that is not here. The same transaction notes which runs' records have to be worked out anew.
 *
 * @throws DOMException when the phone could not store it, or `AbortError` when it was given up:
 *   nothing at all was added
 */
export async function importBackup(db: Database, fresh: Brought, work: Work): Promise<Added> {
  const all = STORES.reduce((sum, store) => sum + fresh[store].size, 0);
  const touched = new Set<string>();
  let added = 0;
  const tx = db.transaction([...STORES, "settings"], "readwrite", { durability: "strict" });
  await inOne(tx, async () => {
    for (const store of STORES) {
      const { atOnce } = KINDS[store];
      await addTo(tx.objectStore(store), fresh[store], atOnce, (some) => {
        for (const one of some) if ("hlc" in one) touched.add(one.runId);
        added += some.length;
        work.onPart(added, all);
        work.signal.throwIfAborted();
      });
    }
    if (touched.size > 0) await markStale(tx.objectStore("settings"), touched);
  });
  return { added, touched };
}
