import { useState } from "preact/hooks";
import { procedureFor } from "../../../core/method/procedures.ts";
import type { Plan } from "../../../core/spec/plan.ts";
import { freshId, perform } from "../../commands.ts";
import { HoldButton } from "../../parts/hold-button.tsx";
import { routes } from "../../routes.ts";
import { say } from "../../words/say.ts";
import { sayLater, sentence } from "../../words/say-later.ts";
import { batchName } from "./batch-name.ts";
import { tools } from "./house.ts";

export interface StartProps {
  /** What is poured: rounded where the house rounds. It is frozen into the run. */
  readonly plan: Plan;
  /** How many lots like it make up the batch. */
  readonly lots: number;
  /** What this batch does otherwise than its spec, one entry each. */
  readonly changes: readonly string[];
  /** Something is being tried out that is not in this batch. */
  readonly pending: boolean;
}

/** The version of the app that a run is pinned to. */
const appVersion = (): string => document.documentElement.dataset.version ?? "";

/** Starts the run; the log then says what it does otherwise than the spec. */
async function begin({ plan, changes }: StartProps, batch: string): Promise<string | undefined> {
  const runId = freshId();
  const procedure = procedureFor(plan.spec, []);
  if (procedure === undefined) return sayLater.plan.noProcedure;
  const started = await perform(runId, {
    type: "start-run",
    batch,
    plan,
    procedure,
    appVersion: appVersion(),
  });
  if (!started.ok) return sentence(started);
  if (changes.length > 0) {
    const text = sayLater.plan.whatIf.note(changes.join("; "), String(plan.spec.version));
    // The plan itself holds every figure: a note that could not be stored loses nothing.
    await perform(runId, { type: "add-note", text });
  }
  location.hash = routes.run(runId);
  return undefined;
}

/** The way into the run, always in reach. */
export function Start(props: StartProps) {
  const { plan, lots, changes, pending } = props;
  const [refusal, setRefusal] = useState<string | undefined>(undefined);
  const words = sayLater.plan;
  const { hints } = say.work;
  const how = [
    ...(lots > 1 ? [words.startLot(lots)] : []),
    ...(changes.length > 0 ? [words.startChanged] : []),
    ...(pending ? [words.whatIf.notUsed] : []),
    ...(tools.value === undefined ? [] : [words.startRounded]),
  ];
  return (
    <div class="plan-start">
      {refusal !== undefined && (
        <p class="plan-say" role="alert">
          {refusal}
        </p>
      )}
      <HoldButton
        label={words.start}
        size="secondary"
        hints={how.length === 0 ? hints : { ...hints, rest: words.hold(hints.rest, how) }}
        onAct={() => void begin(props, batchName(plan.spec.name)).then(setRefusal)}
      />
    </div>
  );
}
