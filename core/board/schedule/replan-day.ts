import { MINUTE } from "../../quantity/time-units-table.ts";
import { chainedPlan } from "./chained.ts";
import { type DayPlan, dayPlanOf, longestOf, type PlacedStep } from "./day-plan.ts";
import type { Day } from "./give-way.ts";
import { expectJobs, type Job, type Limits } from "./job.ts";
import { keepAnnounced, keepThoughLate } from "./keep-announced.ts";
import { longestLate } from "./least-give.ts";
import { type Moved, movedSteps } from "./moved.ts";
import { type NoPlan, type Shortfall, scheduleJobs } from "./plan-day.ts";
import { wideEnough } from "./wide-enough.ts";

/** What was told to people: a plan, and by when each job had to be ready then. */
export interface Announced {
  readonly placed: readonly PlacedStep[];
  /** Epoch ms by job; a job that may be ready later than here is planned afresh. */
  readonly readyBy?: Readonly<Record<string, number>>;
}

/** A day to be planned anew because something went otherwise. */
export interface ToReplan {
  readonly before?: Announced;
  /** As reality has it: what has begun with its true start and the time it takes or took. */
  readonly jobs: readonly Job[];
  /** By id of a job, the id of the one it is made for. */
  readonly madeFor?: ReadonlyMap<string, string>;
  readonly limits: Limits;
  /** Epoch ms. */
  readonly now: number;
}

/** A day planned anew, and what is otherwise in it. */
export interface Replan {
  /** With the ready-by that was found for what is made for another. */
  readonly jobs: readonly Job[];
  readonly plan: DayPlan | NoPlan;
  readonly moved: readonly Moved[];
}

/** What still stands of an announcement: not the jobs that have more time now. */
function standing(
  { placed, readyBy = {} }: Announced,
  jobs: readonly Job[],
): readonly PlacedStep[] {
  const later = new Set(
    jobs.filter(({ id, readyBy: now }) => now - (readyBy[id] ?? now) >= MINUTE).map(({ id }) => id),
  );
  return placed.filter(({ job }) => !later.has(job));
}

type ByJob = { readonly job: string; readonly byMs: number };

const total = (of: readonly ByJob[]): number => of.reduce((sum, { byMs }) => sum + byMs, 0);

/** As late in all as the least of it, or less. */
const asGood = (plan: DayPlan | undefined, least: DayPlan): plan is DayPlan =>
  plan !== undefined && total(plan.late) <= total(least.late);

/** A plan with the same bounds given way, as far as it can be where it was announced. */
function withinLeast(day: Day, least: DayPlan, announced: readonly PlacedStep[]): DayPlan {
  const kept = keepAnnounced(wideEnough(day, least.placed), announced);
  return kept === undefined ? least : dayPlanOf(day.jobs, kept.placed, false, day.now);
}

/** What a bad day lacks, with a plan that makes the least of it and stays where it was announced. */
function badDay(day: Day, fresh: NoPlan, announced: readonly PlacedStep[]): NoPlan {
  const late = keepThoughLate(day, announced, longestLate(day));
  const least = asGood(late, fresh.least) ? late : withinLeast(day, fresh.least, announced);
  const [latest, stood] = [longestOf(least.late), longestOf(least.stood)];
  const told = <One extends Shortfall>(one: One): One => {
    const most = one.breaks === "time" ? latest : one.breaks === "standing" ? stood : undefined;
    return most === undefined ? one : { ...one, by: most.byMs, job: most.job };
  };
  const { instead, also } = fresh;
  return { ...told(fresh), instead: instead.map(told), also: also.map(told), least };
}

function planKeeping(day: Day, announced: readonly PlacedStep[]): DayPlan | NoPlan {
  const { jobs, limits, now } = day;
  if (announced.length === 0) return scheduleJobs(jobs, limits, now);
  expectJobs(jobs, limits, now);
  const kept = keepAnnounced(day, announced);
  if (kept !== undefined) return kept;
  const fresh = scheduleJobs(jobs, limits, now);
  return fresh.ok ? fresh : badDay(day, fresh, announced);
}

/**
 * The day planned anew: what has begun is a fact, work by hand that was announced stays where it was
 * told wherever it still fits, and everything else is as late as it can be around it.
 *
 * @param what - the plan that was announced, if any, and the day as reality has it
 * @returns the plan or what it lacks, and what moved by a minute or more, the largest move first
 * @throws RangeError as `expectJobs`
 * @source `scheduleJobs` does not do this by itself: of plans that are equally late, or nearly, it
 *   finds another one as soon as something has begun
 * @limits `proved` only where nothing could begin later even if nothing were ever short; a day which
 *   does not fit at all is told as `scheduleJobs` tells it
 */
export function replanDay(what: ToReplan): Replan {
  const { before, limits, now, madeFor = new Map<string, string>() } = what;
  const announced = before === undefined ? [] : standing(before, what.jobs);
  const { jobs, plan } = chainedPlan(what.jobs, madeFor, (some) =>
    planKeeping({ jobs: some, limits, now }, announced),
  );
  const { placed } = plan.ok ? plan : plan.least;
  const moved = movedSteps(before?.placed ?? [], placed, { jobs, limits, now });
  return { jobs, plan, moved };
}
