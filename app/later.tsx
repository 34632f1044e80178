import type { ComponentType } from "preact";
import { useEffect, useState } from "preact/hooks";
import { say } from "./words/say.ts";

/**
 * A screen that is fetched when it is first shown; the worker has stored it long before. One that is
 * `quiet` is only a line among others: nothing stands in its place until it is there.
 */
export function later<Props>(
  load: () => Promise<ComponentType<Props>>,
  quiet = false,
): ComponentType<Props> {
  let loaded: ComponentType<Props> | undefined;
  return function Later(props) {
    const [state, setState] = useState<"loading" | "loaded" | "failed">("loading");
    useEffect(() => {
      if (loaded !== undefined) return;
      load().then(
        (screen) => {
          loaded = screen;
          setState("loaded");
        },
        () => setState("failed"),
      );
    }, []);
    const Screen = loaded;
    if (Screen !== undefined) return <Screen {...props} />;
    if (quiet) return null;
    if (state === "failed") return <p class="app-say">{say.places.partMissing}</p>;
    return <p class="app-say">{say.places.loading}</p>;
  };
}
