import type { Curdling } from "../../../core/acid/curdle.ts";
import type { Figure } from "../../../core/quantity/figure.ts";
import { accepted, type Result } from "../../../core/quantity/result.ts";
import { costOf } from "../../../core/spec/cost.ts";
import { type CurdleFigures, curdleFigures } from "../../../core/spec/curdle-figures.ts";
import type { Plan } from "../../../core/spec/plan.ts";
import { type PlanRefusal, planBatch } from "../../../core/spec/plan-batch.ts";
import { curdlingOf } from "../../../core/spec/plan-curdle.ts";
import { servesFigure, topUpFigure } from "../../../core/spec/plan-figures.ts";
import type { BatchSize, Spec } from "../../../core/spec/spec.ts";
import { milkFigure, type Stage, stagesOf, yieldFigure } from "../../../core/spec/stages.ts";
import { house, shelf } from "../../house.ts";

/** Numbers of the whole batch that are set side by side. */
export const WHOLE = ["milk", "yield", "topUp", "bottled", "serves", "cost"] as const;

/** What a plan says will come of it. */
export interface Prediction {
  readonly plan: Plan;
  readonly stages: readonly Stage[];
  readonly curdling?: Curdling;
  readonly curdle?: CurdleFigures;
  readonly whole: Readonly<Partial<Record<(typeof WHOLE)[number], Figure>>>;
}

function wholeOf(plan: Plan, stages: readonly Stage[]): Prediction["whole"] {
  const cost = costOf(plan);
  const bottled = (stages.find(({ name }) => name === "topped-up") ?? stages[0])?.volume;
  const figures = {
    milk: milkFigure(plan),
    yield: yieldFigure(plan),
    topUp: topUpFigure(plan),
    bottled,
    serves: servesFigure(plan),
    cost: cost.priced.length > 0 ? cost.serve : undefined,
  };
  const known = WHOLE.flatMap((name) => {
    const figure = figures[name];
    return figure === undefined ? [] : [[name, figure] as const];
  });
  return Object.fromEntries(known);
}

/** Plans a batch and works out all that can be compared. */
export function predict(spec: Spec, size: BatchSize): Result<Prediction, PlanRefusal> {
  const planned = planBatch(spec, shelf.value, size, house.value);
  if (!planned.ok) return planned;
  const plan = planned.value;
  const stages = stagesOf(plan);
  const curdling = curdlingOf(plan);
  const whole = wholeOf(plan, stages);
  if (curdling === undefined) return accepted({ plan, stages, whole });
  return accepted({ plan, stages, whole, curdling, curdle: curdleFigures(plan, curdling) });
}
