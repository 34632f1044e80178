import type { PlacedStep } from "./day-plan.ts";
import type { Day } from "./give-way.ts";
import { pushedBy } from "./pushed-by.ts";
import { byStep, stepKey } from "./wide-enough.ts";

/** A step that is planned for another moment than before. */
export interface Moved {
  readonly job: string;
  readonly step: string;
  /** ms, above 0 for later. */
  readonly byMs: number;
  /** Epoch ms. */
  readonly startAt: number;
  /** What pushed it: a step that goes on longer, or shorter, than it was planned to. */
  readonly because?: { readonly job: string; readonly step: string };
}

const MINUTE = 60_000;

/** The step that goes on now and ends elsewhere than was planned, by the most. */
function unlike(
  before: ReadonlyMap<string, PlacedStep>,
  after: readonly PlacedStep[],
  now: number,
): PlacedStep | undefined {
  const change = (one: PlacedStep): number => {
    const was = before.get(stepKey(one.job, one.step));
    return was === undefined ? 0 : Math.abs(one.endAt - was.endAt);
  };
  return after
    .filter((one) => one.startAt <= now && change(one) >= MINUTE)
    .toSorted((a, b) => change(b) - change(a))[0];
}

/** Where only the two plans are known. */
function likelyCause(
  before: ReadonlyMap<string, PlacedStep>,
  after: readonly PlacedStep[],
  now: number,
) {
  return ({ job }: PlacedStep): PlacedStep | undefined => {
    const own = after.filter((other) => other.job === job);
    return unlike(before, own, now) ?? unlike(before, after, now);
  };
}

/**
 * What moved between two plans.
 *
 * @param before - as it was last seen
 * @param after - as it is now
 * @param now - epoch ms: what has begun by then is a fact and moves no more
 * @param day - what the plan now was made from
 * @returns steps of both, the largest move first; moves under a minute are left out
 * @source the cause, where the day is given, as `pushedBy`; else the step of the same batch that goes
 *   on and ends elsewhere than it was planned to, else such a step of another batch, which is a guess
 */
export function movedSteps(
  before: readonly PlacedStep[],
  after: readonly PlacedStep[],
  now: number,
  day?: Day,
): readonly Moved[] {
  const was = byStep(before);
  const moves = after.flatMap((one) => {
    const byMs = one.startAt - (was.get(stepKey(one.job, one.step))?.startAt ?? one.startAt);
    return one.startAt <= now || Math.abs(byMs) < MINUTE ? [] : [{ one, byMs }];
  });
  const keys = new Set(moves.map(({ one }) => stepKey(one.job, one.step)));
  const pushers = day === undefined ? undefined : pushedBy(day, before, after, keys);
  const guess = likelyCause(was, after, now);
  return moves
    .map(({ one, byMs }): Moved => {
      const { job, step, startAt } = one;
      const cause = pushers === undefined ? guess(one) : pushers.get(stepKey(job, step));
      const because = cause && { because: { job: cause.job, step: cause.step } };
      return { job, step, byMs, startAt, ...because };
    })
    .toSorted((a, b) => Math.abs(b.byMs) - Math.abs(a.byMs));
}
