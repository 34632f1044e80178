import { useEffect, useState } from "preact/hooks";
import { makeParcel } from "../commands-backup.ts";
import { atDesk } from "../desk.ts";
import { shareFile } from "../device/share.ts";
import { framesOf, MOST_FRAMES } from "../handover/frames.ts";
import { nameOf, packed } from "../handover/parcel.ts";
import { type Handed, handedOf, recordsOf } from "../handover/what.ts";
import { codePath, codeRows } from "../label/code.ts";
import { LinkButton } from "../parts/link-button.tsx";
import { TapButton } from "../parts/tap-button.tsx";
import { routes } from "../routes.ts";
import { now, runOf, specs } from "../state.ts";
import { fileDate } from "../words/format.ts";
import { say } from "../words/say.ts";
import { sayLater } from "../words/say-later.ts";
import "./hand.css";

const words = sayLater.handing;
/** Four codes a second: a phone's camera needs one or two pictures of each. */
const FRAME_FOR = 250;

/** One code, drawn as a single path. */
function Code({ text }: { readonly text: string }) {
  const rows = codeRows(text);
  const size = rows.length;
  return (
    <svg class="hand-code" viewBox={`0 0 ${size} ${size}`} data-code={text} aria-hidden="true">
      <rect class="hand-paper" width={size} height={size} />
      <path class="hand-ink" d={codePath(rows)} />
    </svg>
  );
}

interface Ready {
  readonly text: string;
  readonly frames: readonly string[];
}

/** The parcel as codes; nothing while it is being packed. */
function useParcel(what: Handed): Ready | undefined {
  const [ready, setReady] = useState<Ready>();
  useEffect(() => {
    const records = recordsOf(what);
    if (records === undefined) return;
    void (async () => {
      const text = await makeParcel(records);
      const bytes = await packed(text);
      setReady({ text, frames: framesOf(bytes, await nameOf(bytes)) });
    })();
  }, [JSON.stringify(what)]);
  return ready;
}

function Loop({ frames }: { readonly frames: readonly string[] }) {
  const [at, setAt] = useState(0);
  const [going, setGoing] = useState(true);
  useEffect(() => {
    if (!going || frames.length < 2) return;
    return atDesk().clock.every(FRAME_FOR, () => setAt((shown) => (shown + 1) % frames.length));
  }, [going, frames]);
  return (
    <>
      <Code text={frames[at] ?? ""} />
      {frames.length > 1 && (
        <>
          <p class="hand-at" role="status" aria-live="off">
            {words.at(at + 1, frames.length)}
          </p>
          <p>{words.loop(frames.length)}</p>
          <TapButton pressed={!going} onAct={() => setGoing(!going)}>
            {going ? words.pause : words.goOn}
          </TapButton>
        </>
      )}
    </>
  );
}

/** What it is, in words. */
function nameFor(what: Handed): string | undefined {
  switch (what.kind) {
    case "day":
      return words.what.day;
    case "run": {
      const run = runOf(what.id);
      return run && words.what.run(`${run.plan.spec.name} ${run.batch}`);
    }
    case "spec": {
      const spec = specs.value.find(({ id }) => id === what.id);
      return spec && words.what.spec(spec.name);
    }
  }
}

const backOf = (what: Handed): string =>
  what.kind === "run"
    ? routes.run(what.id)
    : what.kind === "spec"
      ? routes.spec(what.id)
      : routes.days;

function Handing({ what }: { readonly what: Handed }) {
  const ready = useParcel(what);
  const name = `second-pour-${what.kind}-${fileDate(now.value)}.txt`;
  if (ready === undefined) return <p role="status">{words.packing}</p>;
  const { text, frames } = ready;
  return (
    <>
      {frames.length > MOST_FRAMES ? <p>{words.tooMuch}</p> : <Loop frames={frames} />}
      <p>{words.how}</p>
      <TapButton onAct={() => void shareFile({ name, type: "text/plain", text })}>
        {words.file}
      </TapButton>
      {what.kind !== "spec" && <p>{words.stays}</p>}
    </>
  );
}

/** Something shown as codes for another phone's camera. */
export function HandScreen({ id }: { readonly id: string }) {
  const what = handedOf(id);
  const name = what && nameFor(what);
  return (
    <main class="hand">
      {what !== undefined && (
        <LinkButton tone="quiet" href={backOf(what)}>
          {say.places.back}
        </LinkButton>
      )}
      <h1>{words.title}</h1>
      {what === undefined || name === undefined ? (
        <p>{words.lost}</p>
      ) : (
        <>
          <p class="hand-name">{name}</p>
          <Handing what={what} />
        </>
      )}
    </main>
  );
}
