import { peakOn } from "./clash.ts";
import { type DayPlan, dayPlanOf, longestOf, placedSteps } from "./day-plan.ts";
import { type Day, type Fit, fitWith, type Give, giveWay } from "./give-way.ts";
import { expectJobs, type Job, type Limits } from "./job.ts";
import { aloneEnough, leastGive } from "./least-give.ts";
import { type Network, networkOf } from "./network.ts";
import { solveNetwork } from "./solve.ts";

/** What a day lacks. */
export interface Shortfall {
  /** The resource; `time` where ready-by comes too soon; `standing` where a step would stand too long. */
  readonly breaks: string;
  /** Units of the resource, or ms in whole minutes. */
  readonly by: number;
  /** The job that it shows on. */
  readonly job: string;
}

/** A day that does not work out as asked. */
export interface NoPlan extends Shortfall {
  readonly ok: false;
  /** Each of these would be enough in its place. */
  readonly instead: readonly Shortfall[];
  /** Each of these is lacking beside it. */
  readonly also: readonly Shortfall[];
  /** Proved: nothing fits. Otherwise nothing was found. */
  readonly proved: boolean;
  /** The plan that makes the least of it: on time where it can, `late` and `stood` say where not. */
  readonly least: DayPlan;
}

/** Among what is in use at the fullest moment: the smallest job that would make room alone. */
function jobAtPeak(network: Network, of: number, starts: Float64Array, by: number): string {
  const uses = new Map<string, number>();
  for (const { first, amount } of peakOn(network, of, starts).claims) {
    const id = network.chains[first.chain]?.job?.id;
    if (id !== undefined) uses.set(id, (uses.get(id) ?? 0) + amount);
  }
  const jobs = [...uses].sort((a, b) => a[1] - b[1]);
  return (jobs.find(([, amount]) => amount >= by) ?? jobs.at(-1))?.[0] ?? "";
}

function timesShort(plan: DayPlan): readonly Shortfall[] {
  const [stood, late] = [longestOf(plan.stood), longestOf(plan.late)];
  return [
    ...(stood === undefined ? [] : [{ breaks: "standing", by: stood.byMs, job: stood.job }]),
    ...(late === undefined ? [] : [{ breaks: "time", by: late.byMs, job: late.job }]),
  ];
}

function resourcesShort({ network, starts }: Fit, give: Give): readonly Shortfall[] {
  return [...give.extra]
    .filter(([, by]) => by > 0)
    .map(([breaks, by]) => {
      const of = network.resources.indexOf(breaks);
      return { breaks, by, job: jobAtPeak(network, of, starts, by) };
    });
}

/** What gives way in a plan, resources first. */
function shortfalls(day: Day, give: Give, plan: DayPlan): readonly Shortfall[] {
  const fit = give.extra.size === 0 ? undefined : fitWith(day, give);
  return [...(fit === undefined ? [] : resourcesShort(fit, give)), ...timesShort(plan)];
}

/** @param known - a placing that fits, for a search that finds none */
function planWith(day: Day, give: Give, known?: Float64Array): DayPlan {
  const { jobs, limits, now } = giveWay(day, give);
  const network = networkOf(jobs, limits, now);
  const { starts = known, proved } = solveNetwork(network, "latest");
  if (starts === undefined) throw new RangeError("a day that gives way must have a plan, got none");
  return dayPlanOf(day.jobs, placedSteps(network, starts), proved, now);
}

function noPlan(day: Day, proved: boolean): NoPlan {
  const alone = aloneEnough(day);
  const give = leastGive(day, alone);
  const least = planWith(day, give, alone.find((one) => one.give === give)?.starts);
  const ways = alone.flatMap((one) => {
    const plan = one.give === give ? least : planWith(day, one.give, one.starts);
    return shortfalls(day, one.give, plan).filter(({ breaks }) => breaks === one.breaks);
  });
  const [first, ...also] = ways.length > 0 ? ways : shortfalls(day, give, least);
  if (first === undefined) throw new RangeError("a day without a plan must lack something");
  const others = ways.length > 0 ? { instead: also, also: [] } : { instead: [], also };
  return { ok: false, ...first, ...others, proved, least };
}

/**
 * The day's plan, backwards from when each job must be ready: every step as late as it can be while
 * nothing is short, nobody is in two places, and nothing stands longer than it may. Of all plans, one
 * whose jobs start latest, taken together.
 *
 * @param jobs - in any order; none gives an empty plan
 * @param limits - what there is, and when it is not to be had
 * @param now - epoch ms; what has not begun cannot begin before
 * @returns the plan; or what it lacks, by how much, and the plan that makes the least of it
 * @throws RangeError as `expectJobs`
 * @source branch and bound over clashes, as in `search.ts`, from the best of several orders
 * @limits a few jobs are proved latest; with many it is the best of some hundred plans tried and
 *   `proved` says no. A lack of time is found to the minute.
 */
export function scheduleJobs(jobs: readonly Job[], limits: Limits, now: number): DayPlan | NoPlan {
  expectJobs(jobs, limits, now);
  const network = networkOf(jobs, limits, now);
  const { starts, proved } = solveNetwork(network, "latest");
  if (starts === undefined) return noPlan({ jobs, limits, now }, proved);
  return dayPlanOf(jobs, placedSteps(network, starts), proved, now);
}
