import type { Look } from "../../../core/method/procedure.ts";
import type { Run, Visit } from "../../../core/run/run.ts";
import { passesOf } from "../../../core/run/wash-progress.ts";
import { HoldButton } from "../../parts/hold-button.tsx";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";
import { act } from "./act.ts";

interface WorkProps {
  readonly run: Run;
  readonly visit: Visit;
}

/** The good end first, and the biggest. */
const LOOKS_OFFERED = ["clear", "hazy", "cloudy"] as const;

/** A step that ends on what is seen: only a person says whether it is clear. */
export function LookWork({ run, visit }: WorkProps) {
  const words = sayLater.run;
  const finish = (look: Look) =>
    act(run.id, { type: "finish-step", visit: visit.key, look }, words.lookDone[look]);
  return (
    <>
      <p class="run-fact">{words.passes(passesOf(run))}</p>
      <div class="run-actions">
        {[...LOOKS_OFFERED].reverse().map((look) => (
          <HoldButton
            key={look}
            label={words.lookDone[look]}
            hints={say.work.hints}
            tone={look === "clear" ? "main" : "plain"}
            size={look === "clear" ? "primary" : "secondary"}
            onAct={() => finish(look)}
          />
        ))}
      </div>
    </>
  );
}
