import type { ComponentType } from "preact";
import { useEffect, useState } from "preact/hooks";
import { say } from "./words/say.ts";

/** A screen that is fetched when it is first shown; the worker has stored it long before. */
export function later<Props>(load: () => Promise<ComponentType<Props>>): ComponentType<Props> {
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
    if (state === "failed") return <p class="app-say">{say.places.partMissing}</p>;
    return <p class="app-say">{say.places.loading}</p>;
  };
}
