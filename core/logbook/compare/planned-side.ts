import { usualDrip } from "../../method/drip/usual-drip.ts";
import type { Plan } from "../../spec/plan.ts";
import { punchMeasuredOut } from "../../spec/plan-use.ts";
import { balanceIn } from "../balance.ts";
import type { Side } from "./inputs.ts";

interface Washed {
  readonly milk: NonNullable<Plan["milk"]>;
  readonly yield: NonNullable<Plan["yield"]>;
}

function washOf(
  { milk, yield: expected }: Washed,
  punchMl: number,
  filters: number,
): Side["results"] {
  const { curdKeeps, drip } = expected;
  return {
    "yield-share": expected.expected / (punchMl + milk.ml),
    ...(curdKeeps === undefined ? {} : { "curd-kept": curdKeeps }),
    // Without batches of its own nobody knows within a factor of three: that is no plan.
    ...(drip === undefined
      ? {}
      : { "drip-time": usualDrip(expected.expected, filters) * drip.times }),
  };
}

/** A plan as it is set beside what came of it: what was to go in, and what was expected. */
export function plannedSide(plan: Plan): Side {
  const { mixed, milk, yield: expected, spec } = plan;
  const punchMl = punchMeasuredOut(plan);
  const { strength, sugar, acid } = balanceIn(mixed);
  const punch = { "punch-strength": strength, "punch-sugar": sugar, "punch-acid": acid };
  const { wash } = spec;
  if (wash === undefined || milk === undefined || expected === undefined) {
    return { inputs: punch, choices: {}, results: {} };
  }
  return {
    inputs: { "milk-ratio": milk.ml / punchMl, ...punch, filters: wash.filters },
    choices: { order: wash.order, shape: wash.filterShape ?? "unknown", dairy: milk.dairy },
    results: washOf({ milk, yield: expected }, punchMl, wash.filters),
  };
}
