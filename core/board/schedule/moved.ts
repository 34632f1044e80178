import { MINUTE } from "../../quantity/time-units-table.ts";
import type { PlacedStep } from "./day-plan.ts";
import type { Day } from "./give-way.ts";
import { pushedBy } from "./pushed-by.ts";
import { byStep, stepKey } from "./step-key.ts";

/** A step that is planned for another moment than before. */
export interface Moved {
  readonly job: string;
  readonly step: string;
  /** ms, above 0 for later. */
  readonly byMs: number;
  /** Epoch ms. */
  readonly startAt: number;
  /** What pushed it: a step that went otherwise than planned, or was not begun when it should. */
  readonly because?: { readonly job: string; readonly step: string };
}

/**
 * What moved between two plans.
 *
 * @param before - as it was last seen
 * @param after - as it is now
 * @param day - what the plan now was made from; what has begun is a fact and moves no more
 * @returns steps of both, the largest move first; moves under a minute are left out
 * @source the cause as `pushedBy`; where it cannot be told there is none
 */
export function movedSteps(
  before: readonly PlacedStep[],
  after: readonly PlacedStep[],
  day: Day,
): readonly Moved[] {
  const was = byStep(before);
  const moves = after.flatMap((one) => {
    const byMs = one.startAt - (was.get(stepKey(one.job, one.step))?.startAt ?? one.startAt);
    return one.startAt <= day.now || Math.abs(byMs) < MINUTE ? [] : [{ one, byMs }];
  });
  const keys = new Set(moves.map(({ one }) => stepKey(one.job, one.step)));
  const pushers = pushedBy(day, before, after, keys);
  return moves
    .map(({ one, byMs }): Moved => {
      const { job, step, startAt } = one;
      const cause = pushers.get(stepKey(job, step));
      const because = cause && { because: { job: cause.job, step: cause.step } };
      return { job, step, byMs, startAt, ...because };
    })
    .toSorted((a, b) => Math.abs(b.byMs) - Math.abs(a.byMs));
}
