import { accepted, type Result } from "../../quantity/result.ts";
import type { Cupboard } from "../../spec/batch-amounts.ts";
import type { HouseRules } from "../../spec/house-rules.ts";
import type { Plan } from "../../spec/plan.ts";
import { type PlanRefusal, planBatch } from "../../spec/plan-batch.ts";
import type { BatchSize, ServeMethod, Spec } from "../../spec/spec.ts";
import { type Balance, balanceIn } from "../balance.ts";

/** One way to serve a drink. */
export interface Service {
  readonly washed: boolean;
  readonly method: ServeMethod;
}

/** A drink served in one way: as bottled, and in the glass. Volumes in ml. */
export interface Served {
  readonly service: Service;
  readonly plan: Plan;
  readonly bottle: Balance;
  readonly glass: Balance;
  readonly glassMl: number;
  /** degrees C */
  readonly glassAt: number;
  /** Water per drink from ice or thinning. */
  readonly water: number;
  /** Share of what is in the glass that is ice. */
  readonly ice: number;
}

/** A spec as it would be served in another way; unwashed, all of it goes in at once. */
export function servedAs(spec: Spec, { washed, method }: Service): Spec {
  const { dilution, ...serve } = spec.serve;
  // What the house measured holds for its own method alone.
  const own = method === spec.serve.method && dilution !== undefined ? { dilution } : {};
  const otherwise = { ...spec, serve: { ...serve, ...own, method } };
  if (washed || spec.wash === undefined) return otherwise;
  const { wash: _, ...unwashed } = otherwise;
  return { ...unwashed, topUp: { rule: "fixed" } };
}

/**
 * The same drink served in one way.
 *
 * @param spec - as written
 * @param service - washed only where the spec is
 * @source as `planBatch`
 */
export function serveAs(
  spec: Spec,
  service: Service,
  cupboard: Cupboard,
  size: BatchSize,
  house: HouseRules,
): Result<Served, PlanRefusal> {
  const planned = planBatch(servedAs(spec, service), cupboard, size, house);
  if (!planned.ok) return planned;
  const plan = planned.value;
  return accepted({
    service,
    plan,
    bottle: balanceIn(plan.final),
    glass: balanceIn(plan.served),
    glassMl: plan.servedMl,
    glassAt: plan.servedAt,
    water: plan.waterAdded,
    ice: plan.servedIce,
  });
}
