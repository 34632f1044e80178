import { volumeOf } from "../../liquid/liquid.ts";
import { DAY } from "../../quantity/time-units-table.ts";
import { measuredYield, type Run, stepOfVisit } from "../../run/run.ts";
import { milkPoured } from "../../run/wash-progress.ts";
import { NEW_HOUSE } from "../../spec/house-rules.ts";
import { serumOf } from "../../spec/wash.ts";
import { type Balance, balanceIn } from "../balance.ts";

/** What else a batch was made with, beside what its record says already: for learning. */
export interface MadeHow {
  /** The punch as mixed, by the plan: v/v, g per litre. */
  readonly punch: Omit<Balance, "ratio">;
  /** Litres that stayed in the curd per litre of milk; nothing where no yield was measured. */
  readonly curdKept?: number;
  /** The last temperature that was logged at each kind of work, degrees C. */
  readonly degrees: Readonly<Record<string, number>>;
  /** Days from the start to the use-by date of the milk's lot. */
  readonly milkDaysLeft?: number;
}

/**
 * What the curd kept, from the yield: what is missing of the serum, less what the filters hold.
 *
 * @returns litres per litre of milk; below 0 where more came through than the balance allows
 * @source volume balance as in `throughFilter`, solved for k; where an old plan does not say what its
 *   filters keep, what a new house's do
 */
function curdKeptOf(run: Run): number | undefined {
  const { milk: planned, mixed, yield: expected, spec } = run.plan;
  const ml = measuredYield(run);
  const milk = milkPoured(run);
  if (planned === undefined || ml === undefined || !(milk > 0)) return undefined;
  const serum = volumeOf(serumOf({ punch: mixed, dairy: planned.dairy, milk }));
  const filters = (spec.wash?.filters ?? 0) * (expected?.filterKeeps ?? NEW_HOUSE.perFilter);
  return (serum - filters - ml) / milk;
}

function degreesOf(run: Run): Readonly<Record<string, number>> {
  const degrees = new Map<string, number>();
  for (const { what, value, visit } of run.readings) {
    const of = run.visits.find(({ key }) => key === visit);
    if (what !== "temperature" || of === undefined) continue;
    degrees.set(stepOfVisit(run, of).work, value);
  }
  return Object.fromEntries(degrees);
}

function milkDaysOf(run: Run): number | undefined {
  const dairy = run.plan.spec.wash?.dairyId;
  const lot = run.lots.findLast(({ ingredient }) => ingredient === dairy);
  return lot?.useBy === undefined ? undefined : (lot.useBy - run.startedAt) / DAY;
}

/** What else a batch was made with. */
export function madeHow(run: Run): MadeHow {
  const { strength, sugar, acid } = balanceIn(run.plan.mixed);
  const curdKept = curdKeptOf(run);
  const milkDaysLeft = milkDaysOf(run);
  return {
    punch: { strength, sugar, acid },
    ...(curdKept === undefined ? {} : { curdKept }),
    degrees: degreesOf(run),
    ...(milkDaysLeft === undefined ? {} : { milkDaysLeft }),
  };
}
