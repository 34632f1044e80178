import { type Result, refused } from "../core/quantity/result.ts";
import { forgettable } from "../core/run/keepsakes.ts";
import type { Run } from "../core/run/run.ts";
import { type CommandRefusal, perform } from "./commands.ts";
import { atDesk, freshId, onOpen, store } from "./desk.ts";
import { smallPicture } from "./device/picture.ts";
import type { StoredPhoto } from "./storage/database.ts";
import { dropPhotos, photoRoom, photosOfRun, putPhoto } from "./storage/photos.ts";

/**
 * Keeps a picture of a batch: made small, stored, and only then written into its log.
 *
 * @returns the act that was stored, or why nothing was
 */
export async function addPhoto(
  runId: string,
  file: Blob,
): Promise<Result<string, CommandRefusal | "not-a-picture">> {
  const picture = await smallPicture(file);
  if (picture === undefined) return refused("not-a-picture");
  const { media, bytes, width, height } = picture;
  const id = freshId();
  const at = atDesk().clock.now();
  const kept = { id, runId, at, type: media, bytes, width, height };
  const stored = await store((db) => putPhoto(db, kept));
  if (!stored.ok) return stored;
  const noted = await perform(runId, {
    type: "add-photo",
    photo: id,
    media,
    bytes: bytes.byteLength,
    width,
    height,
  });
  // A picture that no log knows would only take room.
  if (!noted.ok) await store((db) => dropPhotos(db, [id]));
  return noted;
}

/** The pictures of a batch that are on this phone; those removed a while ago are deleted. */
export async function photosHere(run: Run): Promise<readonly StoredPhoto[]> {
  const here = await onOpen((db) => photosOfRun(db, run.id));
  const gone = new Set(forgettable(run, here, atDesk().clock.now()));
  if (gone.size > 0) await store((open) => dropPhotos(open, [...gone]));
  return here.filter(({ id }) => !gone.has(id));
}

/** How many pictures there are on this phone, and how much room they take, bytes. */
export const roomOfPhotos = (): Promise<{ count: number; bytes: number }> => onOpen(photoRoom);
