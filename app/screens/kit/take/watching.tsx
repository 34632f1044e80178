import { useEffect, useRef, useState } from "preact/hooks";
import { readBackup } from "../../../commands-backup.ts";
import { atDesk } from "../../../desk.ts";
import { type CameraOutcome, cameraWith } from "../../../device/camera.ts";
import { type Gathered, gather, wholeOf } from "../../../handover/frames.ts";
import { nameOf, unpacked } from "../../../handover/parcel.ts";
import { batchOfCode } from "../../../label/batch-of-code.ts";
import { routes } from "../../../routes.ts";
import { records } from "../../../state.ts";
import type { OpenedBackup } from "../../../storage/backup/open.ts";
import { say } from "../../../words/say.ts";
import { sayLater, sentence } from "../../../words/say-later.ts";

const words = sayLater.handing.take;

/** A parcel is small: it is read before anybody could give it up. */
const UNWATCHED = { signal: new AbortController().signal, onPart: () => undefined };

/** What a whole parcel holds, or why it cannot be taken. */
async function opened(bytes: Uint8Array<ArrayBuffer>, id: string): Promise<OpenedBackup | string> {
  const right = (await nameOf(bytes)) === id;
  const text = right ? await unpacked(bytes) : undefined;
  if (text === undefined) return words.damaged;
  const read = await readBackup(new Blob([text]), UNWATCHED);
  return read.ok ? read.value : sentence(read);
}

const whyNot = (outcome: Exclude<CameraOutcome, "watching">): string =>
  outcome === "part-missing" ? say.places.partMissing : words[outcome];

interface WatchingProps {
  readonly onOpened: (opened: OpenedBackup) => void;
  readonly onFail: (why: string) => void;
}

/** The camera, and what it has read so far. */
export function Watching({ onOpened, onFail }: WatchingProps) {
  const video = useRef<HTMLVideoElement>(null);
  const [gathered, setGathered] = useState<Gathered>();
  useEffect(() => {
    const camera = cameraWith((ms, call) => void atDesk().clock.after(ms, call));
    const screen = video.current;
    if (screen === null) return;
    let so: Gathered | undefined;
    const onCode = (text: string) => {
      const labelled = batchOfCode(text, records.value);
      if (labelled !== undefined) {
        location.hash = routes.batch(labelled);
        return;
      }
      const next = gather(so, text);
      if (next === undefined || next === so) return;
      so = next;
      setGathered(next);
      const bytes = wholeOf(next);
      if (bytes === undefined) return;
      void opened(bytes, next.id).then((found) =>
        typeof found === "string" ? onFail(found) : onOpened(found),
      );
    };
    camera.watch(screen, onCode).then((outcome) => {
      if (outcome !== "watching") onFail(whyNot(outcome));
    });
    return camera.stop;
  }, []);
  return (
    <>
      <video class="kit-camera" ref={video} muted playsInline />
      <p role="status" class="kit-strong">
        {gathered === undefined ? words.looking : words.seen(gathered.parts.size, gathered.count)}
      </p>
    </>
  );
}
