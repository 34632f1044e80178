import type { ComponentChildren } from "preact";
import { useEffect, useState } from "preact/hooks";
import { why } from "./desk.ts";
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
  const [fault, setFault] = useState<string>();
  useEffect(() => {
    if (!there) loadRun(runId).catch((error: unknown) => setFault(why(error)));
  }, [runId, there]);
  if (there) return <>{children}</>;
  if (fault === undefined) return <p class="app-say">{say.places.loading}</p>;
  return (
    <p class="app-say" role="alert">
      {say.places.failed(fault)}
    </p>
  );
}
