import type { ComponentChildren } from "preact";
import { useEffect } from "preact/hooks";
import { loadRun } from "./reading.ts";
import { isLoaded } from "./state.ts";
import { say } from "./words/say.ts";

interface LoggedProps {
  readonly runId: string;
  readonly children: ComponentChildren;
}

/** Reads the log of a batch where it is not in memory: those of ended batches are not. */
export function Logged({ runId, children }: LoggedProps) {
  const there = isLoaded(runId);
  useEffect(() => {
    if (!there) void loadRun(runId);
  }, [runId, there]);
  return there ? <>{children}</> : <p class="app-say">{say.places.loading}</p>;
}
