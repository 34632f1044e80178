import { useState } from "preact/hooks";
import { procedureFor } from "../../../core/method/procedures.ts";
import type { Plan } from "../../../core/spec/plan.ts";
import { begin } from "../../ahead/begin.ts";
import { freshId } from "../../desk.ts";
import { tools } from "../../house.ts";
import { HoldButton } from "../../parts/hold-button.tsx";
import { ownProcedures } from "../../state.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";

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

/** Starts the run by the spec's procedure as it stands now. */
async function beginNow(id: string, { plan, changes }: StartProps): Promise<string | undefined> {
  const procedure = procedureFor(plan.spec, ownProcedures.value);
  if (procedure === undefined) return sayLater.plan.noProcedure;
  return begin({ id, plan, procedure, changes: [...changes] });
}

/** The way into the run, always in reach. */
export function Start(props: StartProps) {
  const { lots, changes, pending } = props;
  const [refusal, setRefusal] = useState<string | undefined>(undefined);
  // Held again while a slow phone stores it, it must not begin a second batch.
  const [id] = useState(freshId);
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
        onAct={() => void beginNow(id, props).then(setRefusal)}
      />
    </div>
  );
}
