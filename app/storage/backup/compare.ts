import type { Database } from "../database.ts";
import { type Kept, KINDS, type StoreName } from "./kinds.ts";
import { isSame } from "./same.ts";

/** Records that lie close together are read in one go, though up to so many times as many lie there. */
const WASTE = 4;

/** A record of a file whose id is known here. */
export interface Known<Name extends StoreName = StoreName> {
  readonly number: number;
  readonly record: Kept[Name];
}

async function storedOf(
  db: Database,
  store: StoreName,
  ids: readonly string[],
): Promise<ReadonlyMap<string, unknown>> {
  const sorted = ids.toSorted();
  const [first = "", last = first] = [sorted[0], sorted.at(-1)];
  const range = IDBKeyRange.bound(first, last);
  const objects = db.transaction(store).store;
  const near = (await objects.count(range)) <= WASTE * ids.length;
  const found = near
    ? await objects.getAll(range)
    : await Promise.all(ids.map((id) => objects.get(id)));
  return new Map(found.flatMap((one) => (one === undefined ? [] : [[one.id, one] as const])));
}

/**
 * Which records say something else than what is stored under the same id.
 *
 * @param some - of one store; as many as are looked up in one go
 */
export async function differingFrom<Name extends StoreName>(
  db: Database,
  store: Name,
  some: readonly Known<Name>[],
): Promise<readonly Known<Name>[]> {
  if (some.length === 0) return [];
  const stored = await storedOf(db, store, [...new Set(some.map(({ record }) => record.id))]);
  return some.filter(({ record }) => {
    const here = stored.get(record.id);
    // What a newer version wrote beside it is no difference.
    return !isSame(here, record) && !isSame(KINDS[store].check(here).data, record);
  });
}
