import { HOUR } from "../quantity/time-units-table.ts";
import type { Pictured, Run } from "./run.ts";

/** The tags that stand, in the order they were put on. */
export function tagsOf(run: Run): readonly string[] {
  const tags = new Set<string>();
  for (const { tag, on } of run.tagged) {
    if (on) tags.add(tag);
    else tags.delete(tag);
  }
  return [...tags];
}

/** The pictures that were not removed. A removed one never comes back under its id. */
export function photosOf(run: Run): readonly Pictured[] {
  const removed = new Set(run.unpictured.map(({ photo }) => photo));
  return run.photos.filter(({ photo }) => !removed.has(photo));
}

/** So long a removal may be taken back before the picture itself is deleted, ms. Judgement. */
const SPARED = HOUR;

/**
 * Stored pictures that nobody will ask for again: removed a while ago, or never written into the
 * log. A removal that was just made may still be taken back.
 *
 * @param stored - pictures of the run, with when each was stored
 * @param now - epoch ms
 * @returns their ids
 */
export function forgettable(
  run: Run,
  stored: readonly { readonly id: string; readonly at: number }[],
  now: number,
): readonly string[] {
  const standing = new Set(photosOf(run).map(({ photo }) => photo));
  const removedAt = new Map(run.unpictured.map(({ photo, at }) => [photo, at]));
  return stored
    .filter(
      ({ id, at }) => !standing.has(id) && now - Math.max(at, removedAt.get(id) ?? 0) > SPARED,
    )
    .map(({ id }) => id);
}
