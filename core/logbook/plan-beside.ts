import { actualFinal } from "../run/actual.ts";
import { bottledOf, measuredYield, type Run, topUpOf } from "../run/run.ts";
import { bottlesMl } from "../run/stock.ts";
import { milkMeasured } from "../run/wash-progress.ts";
import { balanceIn } from "./balance.ts";

/** What the plan foretold, beside what was measured. */
export interface Beside {
  readonly what: "milk" | "yield" | "topUp" | "bottled" | "strength" | "sugar" | "acid";
  /** ml; v/v for a strength; g per litre for sugar and acid. */
  readonly unit: "ml" | "abv" | "g/L";
  readonly planned: number;
  /** Nothing where it was not measured, nor can be worked out from what was. */
  readonly happened?: number;
}

const beside = (
  what: Beside["what"],
  unit: Beside["unit"],
  planned: number | undefined,
  happened: number | undefined,
): readonly Beside[] =>
  planned === undefined
    ? []
    : [{ what, unit, planned, ...(happened === undefined ? {} : { happened }) }];

/**
 * The frozen plan of a batch, figure by figure, beside what happened.
 *
 * @param run - as its log tells it
 * @returns what a batch has none of is left out; strength, sugar and acid are in the bottle, worked
 *   out from the measured yield and top-up once there is either
 * @source mass balance: `actualFinal`
 */
export function planBesideOf(run: Run): readonly Beside[] {
  const { plan } = run;
  const through = measuredYield(run);
  const topUp = topUpOf(run)?.ml;
  const bottled = bottledOf(run);
  const known = through !== undefined || topUp !== undefined;
  const planned = balanceIn(plan.final);
  const actual = known ? balanceIn(actualFinal(run)) : undefined;
  return [
    ...beside("milk", "ml", plan.milk?.ml, milkMeasured(run)),
    ...beside("yield", "ml", plan.yield?.expected, through),
    ...beside("topUp", "ml", plan.heldBackMl > 0 ? plan.heldBackMl : undefined, topUp),
    ...beside("bottled", "ml", plan.finalMl, bottled && bottlesMl(bottled.bottles)),
    ...beside("strength", "abv", planned.strength, actual?.strength),
    ...beside("sugar", "g/L", planned.sugar, actual?.sugar),
    ...beside("acid", "g/L", planned.acid, actual?.acid),
  ];
}
