import { type Run, stepOfVisit, type Visit } from "../../../core/run/run.ts";
import { HoldButton } from "../../parts/hold-button.tsx";
import { LinkButton } from "../../parts/link-button.tsx";
import { routes } from "../../routes.ts";
import { now } from "../../state.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";
import { act } from "./act.ts";

interface WorkProps {
  readonly run: Run;
  readonly visit: Visit;
}

const finish = (run: Run, visit: Visit, done: string) =>
  act(run.id, { type: "finish-step", visit: visit.key }, done);

/** A step that is simply done. */
export function HandsWork({ run, visit }: WorkProps) {
  const done = sayLater.run.done[visit.step] ?? sayLater.run.did;
  return (
    <div class="run-actions">
      {stepOfVisit(run, visit).work === "label" && (
        <LinkButton href={routes.label(run.id)}>{sayLater.run.seeLabel}</LinkButton>
      )}
      <HoldButton label={done} hints={say.work.hints} onAct={() => finish(run, visit, done)} />
    </div>
  );
}

/** A wait: it can be ended at any time. */
export function WaitWork({ run, visit }: WorkProps) {
  const step = stepOfVisit(run, visit);
  const over = step.kind === "watched-wait" || (visit.dueAt ?? 0) <= now.value;
  const done =
    (over ? sayLater.run.done[visit.step] : sayLater.run.done.curdleEarly) ?? sayLater.run.did;
  return (
    <div class="run-actions">
      <HoldButton
        label={done}
        hints={say.work.hints}
        tone={over ? "main" : "plain"}
        onAct={() => finish(run, visit, done)}
      />
    </div>
  );
}
