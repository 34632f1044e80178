import { useEffect, useRef, useState } from "preact/hooks";
import { readBackup } from "../../commands-backup.ts";
import { atDesk } from "../../desk.ts";
import { type CameraOutcome, cameraWith } from "../../device/camera.ts";
import { type Gathered, gather, wholeOf } from "../../handover/frames.ts";
import { nameOf, unpacked } from "../../handover/parcel.ts";
import { batchOfCode } from "../../label/batch-of-code.ts";
import { LinkButton } from "../../parts/link-button.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { routes } from "../../routes.ts";
import { records } from "../../state.ts";
import type { OpenedBackup } from "../../storage/backup/open.ts";
import { sayLater, sentence } from "../../words/say-later.ts";
import { Summary } from "./summary.tsx";

type Taking =
  | { readonly type: "idle"; readonly why?: string }
  | { readonly type: "watching"; readonly gathered?: Gathered }
  | { readonly type: "open"; readonly opened: OpenedBackup }
  | { readonly type: "taken"; readonly count: number };

const words = sayLater.handing.take;

/** A parcel is small: it is read before anybody could give it up. */
const UNWATCHED = { signal: new AbortController().signal, onPart: () => undefined };

/** What a whole parcel holds. */
async function openedFrom(gathered: Gathered): Promise<Taking> {
  const bytes = wholeOf(gathered);
  if (bytes === undefined) return { type: "watching", gathered };
  const right = (await nameOf(bytes)) === gathered.id;
  const text = right ? await unpacked(bytes) : undefined;
  if (text === undefined) return { type: "idle", why: words.damaged };
  const read = await readBackup(new Blob([text]), UNWATCHED);
  return read.ok ? { type: "open", opened: read.value } : { type: "idle", why: sentence(read) };
}

const whyNot = (outcome: Exclude<CameraOutcome, "watching">): string => words[outcome];

/** The camera, and what it has read so far. */
function Watching(props: {
  readonly gathered: Gathered | undefined;
  readonly onGather: (change: (so: Gathered | undefined) => Gathered | undefined) => void;
  readonly onFail: (why: string) => void;
}) {
  const video = useRef<HTMLVideoElement>(null);
  const { gathered, onGather, onFail } = props;
  useEffect(() => {
    const camera = cameraWith((ms, call) => void atDesk().clock.after(ms, call));
    const screen = video.current;
    if (screen === null) return;
    camera
      .watch(screen, (text) => {
        const labelled = batchOfCode(text, records.value);
        if (labelled === undefined) onGather((so) => gather(so, text));
        else location.hash = routes.batch(labelled);
      })
      .then((outcome) => {
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

/** Takes over what another phone shows as codes: counted first, added on a hold. */
export function Take() {
  const [state, setState] = useState<Taking>({ type: "idle" });
  const onGather = (change: (so: Gathered | undefined) => Gathered | undefined) =>
    setState((so) => {
      if (so.type !== "watching") return so;
      const gathered = change(so.gathered);
      if (gathered === undefined || gathered === so.gathered) return so;
      if (gathered.parts.size === gathered.count) void openedFrom(gathered).then(setState);
      return { type: "watching", gathered };
    });
  return (
    <section class="kit-part">
      <h2>{words.title}</h2>
      <p>{words.why}</p>
      {state.type === "idle" && state.why !== undefined && <p role="alert">{state.why}</p>}
      {state.type === "watching" && (
        <Watching
          gathered={state.gathered}
          onGather={onGather}
          onFail={(why) => setState({ type: "idle", why })}
        />
      )}
      {state.type === "open" && (
        <Summary opened={state.opened} onAdded={(count) => setState({ type: "taken", count })} />
      )}
      {state.type === "taken" && <p role="status">{words.done(state.count)}</p>}
      {state.type === "taken" && <LinkButton href={routes.bench}>{words.toBench}</LinkButton>}
      <TapButton
        onAct={() => setState(state.type === "watching" ? { type: "idle" } : { type: "watching" })}
      >
        {state.type === "watching" ? words.stop : words.open}
      </TapButton>
    </section>
  );
}
