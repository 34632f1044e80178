import { useState } from "preact/hooks";
import type { Result } from "../../../core/quantity/result.ts";
import type { Watch } from "../../commands-backup.ts";
import {
  type SharedFile,
  type ShareOutcome,
  saveFile,
  shareFile,
  tapStillCounts,
} from "../../device/share.ts";
import { TapButton } from "../../parts/tap-button.tsx";
import { sayLater, sentence } from "../../words/say-later.ts";
import { type LongWork, useLongWork, WorkLine } from "./long-work.tsx";

/** A file that was made, and what is to be done once it was handed on. */
export interface Made {
  readonly file: SharedFile;
  readonly onHanded?: () => void;
}

/** Writes a file while somebody watches. */
export type Write = (watch: Watch) => Promise<Result<Made, string>>;

function outcomeWords(outcome: ShareOutcome, name: string): string {
  const words = sayLater.kit.backup;
  switch (outcome) {
    case "shared":
      return words.shared(name);
    case "saved":
      return words.saved(name);
    case "dismissed":
    case "failed":
      return words.dismissed;
  }
}

/** A file being made and handed on. */
export interface FileMaking {
  readonly work: LongWork;
  /** Made, but too long after the tap for the share sheet to open by itself. */
  readonly ready: Made | undefined;
  readonly says: string;
  readonly share: (write: Write) => Promise<void>;
  readonly save: (write: Write) => Promise<void>;
  readonly shareReady: (made: Made) => Promise<void>;
}

/** Makes files, and hands them to the share sheet or into the browser's downloads. */
export function useFileMaking(): FileMaking {
  const work = useLongWork();
  const [ready, setReady] = useState<Made>();
  const [says, setSays] = useState("");
  const made = async (write: Write): Promise<Made | undefined> => {
    if (work.progress !== undefined) return undefined;
    setReady(undefined);
    setSays("");
    const written = await work.during(write);
    if (!written.ok) setSays(sentence(written));
    return written.ok ? written.value : undefined;
  };
  const handed = (one: Made, outcome: ShareOutcome) => {
    setReady(undefined);
    setSays(outcomeWords(outcome, one.file.name));
    // Shared: the sheet took it. Saved: the browser was given it; nobody tells how that went.
    if (outcome === "shared" || outcome === "saved") one.onHanded?.();
  };
  const shareReady = async (one: Made) => handed(one, await shareFile(one.file));
  return {
    work,
    ready,
    says,
    shareReady,
    share: async (write) => {
      const one = await made(write);
      if (one === undefined) return;
      if (tapStillCounts()) await shareReady(one);
      else setReady(one);
    },
    save: async (write) => {
      const one = await made(write);
      if (one === undefined) return;
      saveFile(one.file);
      handed(one, "saved");
    },
  };
}

/** How far a file is, and what became of it. */
export function FileLine(props: {
  readonly making: FileMaking;
  readonly says: (done: number, all: number) => string;
}) {
  const words = sayLater.kit.backup;
  const { making } = props;
  const { work, ready, says, shareReady } = making;
  return (
    <>
      <WorkLine work={work} says={props.says} begins={words.leaveNot} />
      {ready !== undefined && (
        <>
          <p role="status">{words.ready}</p>
          <TapButton onAct={() => void shareReady(ready)}>{words.handOn}</TapButton>
        </>
      )}
      <p role="status">{says}</p>
    </>
  );
}
