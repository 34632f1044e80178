import type { Run, Visit } from "../../../core/run/run.ts";
import type { PlanLine } from "../../../core/spec/plan.ts";
import { perform, tell } from "../../commands.ts";
import { HoldButton } from "../../parts/hold-button.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { settings } from "../../state.ts";
import { mass, volume } from "../../words/format.ts";
import { say } from "../../words/say.ts";
import { sayLater, sentence } from "../../words/say-later.ts";
import { act } from "./act.ts";

interface WorkProps {
  readonly run: Run;
  readonly visit: Visit;
}

/** A figure and its unit stay on one line. */
function Amount({ line }: { readonly line: PlanLine }) {
  const { ml, g } = line.before;
  const grams = <span>{mass(g)}</span>;
  if (line.weighed) return grams;
  return (
    <>
      <span>{volume(ml, settings.value)} ·</span> {grams}
    </>
  );
}

function Line({ run, visit, line }: WorkProps & { readonly line: PlanLine }) {
  const ticked = run.poured.find((one) => one.line === line.lineId);
  const toggle = async () => {
    const done =
      ticked === undefined
        ? await perform(run.id, { type: "pour-line", visit: visit.key, line: line.lineId })
        : await perform(run.id, { type: "undo", act: ticked.act });
    if (!done.ok) tell(sentence(done));
  };
  return (
    <li>
      <TapButton pressed={ticked !== undefined} onAct={() => void toggle()}>
        <span class="run-line" data-in={ticked !== undefined}>
          <span class="run-line-name">{line.name}</span>
          <span class="run-tick" aria-hidden="true">
            {ticked === undefined ? "" : "✓"}
          </span>
          <span class="run-line-amount">
            <Amount line={line} />
          </span>
        </span>
      </TapButton>
    </li>
  );
}

/** Measuring the punch: every line is ticked as it goes in, and a tick survives anything. */
export function BuildWork({ run, visit }: WorkProps) {
  const lines = run.plan.lines.filter((line) => line.before.g > 0);
  const missing = lines.filter((line) => !run.poured.some((one) => one.line === line.lineId));
  return (
    <>
      <ul class="run-lines">
        {lines.map((line) => (
          <Line key={line.lineId} run={run} visit={visit} line={line} />
        ))}
      </ul>
      <div class="run-actions">
        <HoldButton
          label={sayLater.run.done.build ?? ""}
          detail={missing.length === 0 ? undefined : sayLater.run.missing(missing.length)}
          hints={say.work.hints}
          tone={missing.length === 0 ? "main" : "plain"}
          onAct={() =>
            act(run.id, { type: "finish-step", visit: visit.key }, sayLater.run.done.build ?? "")
          }
        />
      </div>
    </>
  );
}
