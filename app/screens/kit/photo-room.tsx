import { useEffect, useState } from "preact/hooks";
import { roomOfPhotos } from "../../photos.ts";
import { sayLater } from "../../words/say-later.ts";
import { storageSize } from "../../words/storage-size.ts";

/** How many pictures of batches are kept, and how much room they take. */
export function PhotoRoom() {
  const [room, setRoom] = useState<{ count: number; bytes: number } | undefined>(undefined);
  useEffect(() => {
    // Where the phone's storage does not answer, nothing is said.
    roomOfPhotos().then(setRoom, () => undefined);
  }, []);
  if (room === undefined) return null;
  const words = sayLater.photos;
  return (
    <>
      <dt>{words.roomTitle}</dt>
      <dd>{words.room(room.count, storageSize(room.bytes))}</dd>
    </>
  );
}
