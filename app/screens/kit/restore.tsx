import { useId, useState } from "preact/hooks";
import { type OpenedBackup, openBackup } from "../../commands-backup.ts";
import { sayLater, sentence } from "../../words/say-later.ts";
import { Summary } from "./summary.tsx";

type Restoring =
  | { readonly type: "idle" }
  | { readonly type: "reading" }
  | { readonly type: "open"; readonly opened: OpenedBackup }
  | { readonly type: "refused"; readonly why: string }
  | { readonly type: "added"; readonly count: number };

async function textOf(file: File): Promise<string | undefined> {
  try {
    return await file.text();
  } catch {
    return undefined;
  }
}

async function opened(file: File): Promise<Restoring> {
  const text = await textOf(file);
  if (text === undefined) return { type: "refused", why: sayLater.kit.restore.unreadable };
  const read = await openBackup(text);
  return read.ok ? { type: "open", opened: read.value } : { type: "refused", why: sentence(read) };
}

/** Brings a backup in: what it holds is counted first, and added only on a hold. */
export function Restore() {
  const id = useId();
  const [state, setState] = useState<Restoring>({ type: "idle" });
  const words = sayLater.kit.restore;
  const pick = async (input: HTMLInputElement) => {
    const file = input.files?.[0];
    if (file === undefined) return;
    setState({ type: "reading" });
    setState(await opened(file));
    // The same file may be chosen again, perhaps mended.
    input.value = "";
  };
  return (
    <section class="kit-part">
      <h2>{words.title}</h2>
      <label class="kit-pick" for={id}>
        {words.pick}
      </label>
      <input
        class="kit-file"
        id={id}
        type="file"
        accept=".txt,text/plain"
        aria-describedby={`${id}-hint`}
        onChange={(event) => void pick(event.currentTarget)}
      />
      <p class="kit-quiet" id={`${id}-hint`}>
        {words.hint}
      </p>
      {state.type === "reading" && <p role="status">{words.reading}</p>}
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
