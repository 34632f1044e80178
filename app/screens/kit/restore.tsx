import { useId, useState } from "preact/hooks";
import { readBackup } from "../../commands-backup.ts";
import type { OpenedBackup } from "../../storage/backup/open.ts";
import { sayLater, sentence } from "../../words/say-later.ts";
import { useLongWork, WorkLine } from "./long-work.tsx";
import { Summary } from "./summary.tsx";

type Restoring =
  | { readonly type: "idle" }
  | { readonly type: "open"; readonly opened: OpenedBackup }
  | { readonly type: "refused"; readonly why: string }
  | { readonly type: "added"; readonly count: number };

/** Brings a backup in: what it holds is counted first, and added only on a hold. */
export function Restore() {
  const id = useId();
  const work = useLongWork();
  const [state, setState] = useState<Restoring>({ type: "idle" });
  const words = sayLater.kit.restore;
  const pick = async (input: HTMLInputElement) => {
    const file = input.files?.[0];
    if (file === undefined) return;
    setState({ type: "idle" });
    const read = await work.during((watch) => readBackup(file, watch));
    if (read.ok) setState({ type: "open", opened: read.value });
    else setState({ type: "refused", why: sentence(read) });
    // The same file may be chosen again, perhaps mended.
    input.value = "";
  };
  return (
    <section class="part">
      <h2>{words.title}</h2>
      <label class="kit-pick" for={id}>
        {words.pick}
      </label>
      <input
        class="kit-file"
        id={id}
        type="file"
        accept=".txt,text/plain"
        disabled={work.progress !== undefined}
        aria-describedby={`${id}-hint`}
        onChange={(event) => void pick(event.currentTarget)}
      />
      <p class="soft" id={`${id}-hint`}>
        {words.hint}
      </p>
      <WorkLine work={work} says={words.readingOf} begins={words.reading} />
      {state.type === "refused" && (
        <p class="kit-fault" role="alert">
          {state.why}
        </p>
      )}
      {state.type === "open" && (
        <Summary opened={state.opened} onAdded={(count) => setState({ type: "added", count })} />
      )}
      {state.type === "added" && <p role="status">{words.added(state.count)}</p>}
    </section>
  );
}
