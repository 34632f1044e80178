import { useEffect, useRef, useState } from "preact/hooks";
import type { Watch } from "../../commands-backup.ts";
import { TapButton } from "../../parts/tap-button.tsx";
import { sayLater } from "../../words/say-later.ts";

/** How far long work is. */
interface Progress {
  readonly done: number;
  readonly all: number;
}

/** The screen is told at every so many parts of the whole. */
const PARTS = 100;

/** Long work that shows how far it is and can be given up. */
export interface LongWork {
  readonly progress: Progress | undefined;
  /** Does it; whoever leaves the screen gives it up, unless it goes on by itself. */
  readonly during: <Value>(work: (watch: Watch) => Promise<Value>) => Promise<Value>;
  readonly giveUp: () => void;
}

/** Work that takes long with a full phone. */
export function useLongWork({ goesOn = false } = {}): LongWork {
  const [progress, setProgress] = useState<Progress>();
  const working = useRef<AbortController | undefined>(undefined);
  const giveUp = () => working.current?.abort();
  useEffect(() => (goesOn ? undefined : giveUp), []);
  const during: LongWork["during"] = async (work) => {
    const control = new AbortController();
    working.current = control;
    let shown = 0;
    setProgress({ done: 0, all: 0 });
    const onPart = (done: number, all: number) => {
      if (done >= shown && done < Math.min(all, shown + all / PARTS)) return;
      shown = done;
      setProgress({ done, all });
    };
    try {
      return await work({ signal: control.signal, onPart });
    } finally {
      setProgress(undefined);
    }
  };
  return { progress, during, giveUp };
}

/** How far long work is, and the way to give it up. */
export function WorkLine(props: {
  readonly work: LongWork;
  readonly says: (done: number, all: number) => string;
  readonly begins: string;
  /** It can no longer be given up. */
  readonly bound?: boolean;
}) {
  const { progress, giveUp } = props.work;
  if (progress === undefined) return null;
  const { done, all } = progress;
  return (
    <>
      <p class="kit-strong" role="status" aria-live="off">
        {all === 0 ? props.begins : props.says(Math.min(done, all), all)}
      </p>
      {props.bound !== true && (
        <TapButton tone="quiet" onAct={giveUp}>
          {sayLater.kit.backup.giveUp}
        </TapButton>
      )}
    </>
  );
}
