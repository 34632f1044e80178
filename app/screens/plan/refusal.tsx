import type { Refused } from "../../../core/quantity/result.ts";
import type { PlanRefusal } from "../../../core/spec/plan-batch.ts";
import type { BatchSize, Spec, TopUpRule } from "../../../core/spec/spec.ts";
import { nearestTopUp } from "../../../core/spec/what-if.ts";
import { house, shelf } from "../../house.ts";
import { TapButton } from "../../parts/tap-button.tsx";
import { abv } from "../../words/format.ts";
import { sayLater, sentence } from "../../words/say-later.ts";

export interface RefusalProps {
  readonly title: string;
  readonly refusal: Refused<PlanRefusal>;
  /** What cannot be planned. */
  readonly spec: Spec;
  readonly size: BatchSize;
  readonly onTopUp: (topUp: TopUpRule) => void;
}

const instead = (topUp: TopUpRule): string =>
  topUp.rule === "strength" ? sayLater.plan.nearest(abv(topUp.target)) : sayLater.plan.inProportion;

/** Why a batch cannot be planned, and the nearest that can be, where its top-up is what is wrong. */
export function Refusal({ title, refusal, spec, size, onTopUp }: RefusalProps) {
  const nearest = nearestTopUp(spec, shelf.value, size, house.value);
  return (
    <div class="plan-cannot" role="alert">
      <p class="plan-strong">{title}</p>
      <p>{sentence(refusal)}</p>
      {nearest !== undefined && (
        <TapButton onAct={() => onTopUp(nearest)}>{instead(nearest)}</TapButton>
      )}
    </div>
  );
}
