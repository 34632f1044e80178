import { volumeOf } from "../liquid/liquid.ts";
import { accepted, type Result, refused } from "../quantity/result.ts";
import type { HouseRules } from "./house-rules.ts";
import type { Plan } from "./plan.ts";
import { type PlanRefusal, planBatch } from "./plan-batch.ts";

/** A batch made in equal lots. */
export interface Lots {
  readonly count: number;
  /** Of each lot; the batch's own where it fits as it is. */
  readonly plan: Plan;
}

/** Why no number of lots will do. */
export type LotsRefusal = PlanRefusal | "vessel-too-small";

/** More lots than anybody makes of one batch. Judgement. */
const MOST_LOTS = 200;
/** Share of the vessel that a fill may seem to be over by. */
const FILL_SLIP = 1e-9;

/** ml that stand in the vessel at once: punch and milk. */
const inVessel = (plan: Plan): number => plan.yield?.poured ?? volumeOf(plan.mixed);

/**
 * How a batch is split when punch and milk do not fit into the largest vessel at once: into as few
 * equal lots as fit, each planned on its own, since each has filters of its own that keep their part.
 *
 * @param plan - the whole batch
 * @param vesselMl - the largest vessel, ml
 * @param house - what curd and filters keep
 * @returns the number of lots and the plan of one; or a refusal where the vessel is so small that
 * filters drink up what it holds
 * @throws RangeError when the vessel does not hold anything
 * @limits the vessel of the wash alone: what comes through and its top-up are taken to be bottled
 */
export function lotsFor(
  plan: Plan,
  vesselMl: number,
  house: HouseRules,
): Result<Lots, LotsRefusal> {
  if (!(vesselMl > 0)) throw new RangeError(`a vessel must hold more than 0 ml, got ${vesselMl}`);
  const most = vesselMl * (1 + FILL_SLIP);
  if (inVessel(plan) <= most) return accepted({ count: 1, plan });
  const cupboard = new Map(plan.ingredients.map((one) => [one.id, one]));
  let count = Math.ceil(inVessel(plan) / most);
  while (count <= MOST_LOTS) {
    const size = { by: "volume", volume: plan.finalMl / count } as const;
    const lot = planBatch(plan.spec, cupboard, size, { ...house, ounce: plan.ounce });
    if (!lot.ok) return lot;
    if (inVessel(lot.value) <= most) return accepted({ count, plan: lot.value });
    count += 1;
  }
  return refused("vessel-too-small", { vessel: vesselMl, lots: MOST_LOTS });
}
