import { measuredYield, type Run } from "../run/run.ts";
import { pouredIn } from "../run/wash-progress.ts";
import { punchMeasuredOut } from "../spec/plan-use.ts";

/** How much of what was poured came through, beside what the plan expected. Volumes in ml. */
export interface YieldShare {
  readonly ml: number;
  readonly poured: number;
  /** Measured yield per volume poured in, dairy included. */
  readonly share: number;
  readonly expectedMl: number;
  readonly expectedShare: number;
}

/**
 * The yield of a washed batch.
 *
 * @returns nothing while the yield is not measured, or where nothing is washed
 * @source the trade's definition: clear liquid out per liquid in, both by volume, dairy included
 * @limits volumes in are summed as measured, before they meet: a spirit and a juice shrink by up to
 *   about 1 % when they mix, in both shares alike
 */
export function yieldShareOf(run: Run): YieldShare | undefined {
  const ml = measuredYield(run);
  const { plan } = run;
  const poured = pouredIn(run);
  if (ml === undefined || plan.yield === undefined || !(poured > 0)) return undefined;
  const planned = punchMeasuredOut(plan) + (plan.milk?.ml ?? 0);
  const expectedMl = plan.yield.expected;
  return { ml, poured, share: ml / poured, expectedMl, expectedShare: expectedMl / planned };
}
