import type { ComponentType, FunctionComponent, RenderableProps } from "preact";
import { useEffect, useState } from "preact/hooks";
import { say } from "./words/say.ts";

/** What is drawn once it has been fetched; it may be fetched before it is shown. */
export type Late<Props> = FunctionComponent<Props> & { readonly fetch: () => Promise<unknown> };

/**
 * A screen that is fetched when it is first shown; the worker has stored it long before. One that is
 * `quiet` stands among others: nothing is in its place until it is there, or cannot be fetched.
 */
export function later<Props>(
  load: () => Promise<ComponentType<Props>>,
  quiet = false,
): Late<Props> {
  let loaded: ComponentType<Props> | undefined;
  const fetch = async () => {
    loaded ??= await load();
  };
  function Later(props: RenderableProps<Props>) {
    const [state, setState] = useState(loaded === undefined ? "loading" : "loaded");
    useEffect(() => {
      if (state === "loaded") return;
      fetch().then(
        () => setState("loaded"),
        () => setState("failed"),
      );
    }, []);
    const Screen = loaded;
    if (Screen !== undefined) return <Screen {...props} />;
    if (state === "failed") return <p class="app-say">{say.places.partMissing}</p>;
    if (quiet) return null;
    return <p class="app-say">{say.places.loading}</p>;
  }
  return Object.assign(Later, { fetch });
}
