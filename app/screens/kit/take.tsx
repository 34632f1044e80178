import { useState } from "preact/hooks";
import { later } from "../../later.tsx";
import { LinkButton } from "../../parts/link-button.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { routes } from "../../routes.ts";
import type { OpenedBackup } from "../../storage/backup/open.ts";
import { sayLater } from "../../words/say-later.ts";
import { Summary } from "./summary.tsx";

type Taking =
  | { readonly type: "idle"; readonly why?: string }
  | { readonly type: "watching" }
  | { readonly type: "open"; readonly opened: OpenedBackup }
  | { readonly type: "taken"; readonly count: number };

const words = sayLater.handing.take;

/** The camera and its reader are fetched when they are asked for. */
const Watching = later(async () => (await import("./take/watching.tsx")).Watching, true);

/** Takes over what another phone shows as codes: counted first, added on a hold. */
export function Take() {
  const [state, setState] = useState<Taking>({ type: "idle" });
  const watching = state.type === "watching";
  /** What the camera found counts while somebody still looks. */
  const found = (next: Taking) => setState((so) => (so.type === "watching" ? next : so));
  return (
    <section class="part">
      <h2>{words.title}</h2>
      <p>{words.why}</p>
      {state.type === "idle" && state.why !== undefined && <p role="alert">{state.why}</p>}
      {watching && (
        <Watching
          onOpened={(opened) => found({ type: "open", opened })}
          onFail={(why) => found({ type: "idle", why })}
        />
      )}
      {state.type === "open" && (
        <Summary opened={state.opened} onAdded={(count) => setState({ type: "taken", count })} />
      )}
      {state.type === "taken" && <p role="status">{words.done(state.count)}</p>}
      {state.type === "taken" && <LinkButton href={routes.bench}>{words.toBench}</LinkButton>}
      <TapButton onAct={() => setState({ type: watching ? "idle" : "watching" })}>
        {watching ? words.stop : words.open}
      </TapButton>
    </section>
  );
}
