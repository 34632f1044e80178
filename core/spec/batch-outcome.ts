import { dairyOf } from "../acid/milk.ts";
import { volumeOf } from "../liquid/liquid.ts";
import { portion } from "../liquid/mixing.ts";
import { filtersKeep, type Trial } from "./batch-trial.ts";
import { retentionOf } from "./curd-retention.ts";
import type { HouseRules } from "./house-rules.ts";
import type { Plan } from "./plan.ts";
import { servePour } from "./serve.ts";
import type { Spec } from "./spec.ts";
import { throughFilter } from "./wash.ts";
import { learntFor, retentionFor } from "./wash-group.ts";

function washParts(
  spec: Spec,
  trial: Trial,
  milkName: string,
  house: HouseRules,
): Pick<Plan, "milk" | "yield" | "washed"> {
  const { wash, clear, clearMl } = trial;
  if (wash === undefined) return {};
  const retention = retentionOf(retentionFor(house, spec, wash.dairy), wash.dairy);
  const drip = learntFor(house, spec, wash.dairy)?.drip;
  const keep = filtersKeep(spec, house);
  const { densityKgPerL } = dairyOf(wash.dairy);
  return {
    milk: { name: milkName, dairy: wash.dairy, ml: wash.milk, g: wash.milk * densityKgPerL },
    yield: {
      poured: volumeOf(wash.punch) + wash.milk,
      expected: clearMl,
      low: throughFilter(wash, retention.high, keep),
      high: throughFilter(wash, retention.low, keep),
      from: retention.from,
      batches: retention.batches,
      curdKeeps: retention.mean,
      filterKeeps: house.perFilter,
      ...(drip === undefined ? {} : { drip }),
    },
    washed: clear,
  };
}

/** What a plan predicts, from punch to glass. */
export type Predicted = Pick<
  Plan,
  | "milk"
  | "yield"
  | "washed"
  | "mixed"
  | "heldBack"
  | "heldBackMl"
  | "final"
  | "finalMl"
  | "served"
  | "servedMl"
  | "servedAt"
  | "servedIce"
  | "waterAdded"
>;

/**
 * What a plan says of a trial, from punch to glass.
 *
 * @param trial - with something in the bottle
 * @param milkName - what the milk is called; not looked at where nothing is washed
 */
export function outcomeOf(
  spec: Spec,
  trial: Trial,
  milkName: string,
  house: HouseRules,
): Predicted {
  const served = servePour(portion(trial.final, spec.serve.pour), spec.serve);
  return {
    ...washParts(spec, trial, milkName, house),
    mixed: trial.mixed,
    heldBack: trial.heldBack,
    heldBackMl: trial.heldBackMl,
    final: trial.final,
    finalMl: volumeOf(trial.final),
    served: served.liquid,
    servedMl: volumeOf(served.liquid),
    servedAt: served.temperature,
    servedIce: served.ice,
    waterAdded: served.waterAdded,
  };
}
