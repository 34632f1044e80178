import type { Database, StoredPhoto } from "./database.ts";
import { inOne } from "./in-one.ts";

/** Keeps a picture, flushed to disk before it resolves. */
export async function putPhoto(db: Database, photo: StoredPhoto): Promise<void> {
  const tx = db.transaction("photos", "readwrite", { durability: "strict" });
  await inOne(tx, () => tx.store.put(photo));
}

/** The pictures of a batch that are on this phone. */
export const photosOfRun = (db: Database, runId: string): Promise<readonly StoredPhoto[]> =>
  db.getAllFromIndex("photos", "runId", runId);

/** Deletes pictures for good. */
export async function dropPhotos(db: Database, ids: readonly string[]): Promise<void> {
  if (ids.length === 0) return;
  const tx = db.transaction("photos", "readwrite", { durability: "strict" });
  await inOne(tx, () => Promise.all(ids.map((id) => tx.store.delete(id))));
}

/** How many pictures there are, and how much room they take, bytes. One is held at a time. */
export async function photoRoom(db: Database): Promise<{ count: number; bytes: number }> {
  let [count, bytes] = [0, 0];
  for await (const { value } of db.transaction("photos").store) {
    count += 1;
    bytes += value.bytes.byteLength;
  }
  return { count, bytes };
}
