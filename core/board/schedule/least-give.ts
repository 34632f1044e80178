import { MINUTE } from "../../quantity/time-units-table.ts";
import { peakOn } from "./clash.ts";
import { type Day, fitWith, type Give, NO_GIVE } from "./give-way.ts";
import type { Job } from "./job.ts";
import { lateInTurn } from "./late-in-turn.ts";
import { narrow, type Probe } from "./narrow.ts";

/** Amounts of a resource closer than this count as one. */
const CLOSE = 1e-3;
/** Days of more steps than this are told roughly: each look at them takes its time. */
const MANY = 100;
/** How rough: a share of what is told. Judgement. */
const ROUGH = 0.1;
const ROUGH_EACH = 0.3;

const isLarge = ({ jobs }: Day): boolean =>
  jobs.reduce((sum, { steps }) => sum + steps.length, 0) > MANY;

/** A minute, or a share of a long time on a large day. */
const minuteOr =
  (day: Day, share: number) =>
  (fits: number): number =>
    isLarge(day) ? Math.max(1, share * fits) : 1;

/** Where all amounts are whole, so is what lacks. */
function unitOf({ jobs, limits: { capacity, taken = [] } }: Day, name: string): number {
  const uses = jobs.flatMap(({ steps, holds = [] }) => [...holds, ...steps.flatMap((s) => s.uses)]);
  const amounts = [...uses, ...taken]
    .filter(({ resource }) => resource === name)
    .map(({ amount }) => amount);
  return [capacity[name] ?? 0, ...amounts].every(Number.isInteger) ? 1 : CLOSE;
}

/** What gives way job by job, in minutes. */
type ByJob = "late" | "standing";

const forAll = (jobs: readonly Job[], minutes: number): ReadonlyMap<string, number> =>
  new Map(jobs.map(({ id }) => [id, minutes]));

/** When all would be done one after another, once nothing is in the way any more. Epoch ms. */
function endOfQueue({ jobs, limits, now }: Day): number {
  const steps = jobs.flatMap((job) => job.steps);
  const from = Math.max(
    now,
    ...jobs.map(({ earliest = 0 }) => earliest),
    ...steps.map(({ fixedStart = 0, forMs }) => fixedStart + forMs),
    ...(limits.taken ?? []).map(({ to }) => to),
  );
  return from + steps.reduce((sum, { forMs }) => sum + forMs, 0);
}

/** No job need be later than this, whole minutes from 1. */
export function longestLate(day: Day): number {
  const first = Math.min(...day.jobs.map(({ readyBy }) => readyBy));
  return Math.max(1, Math.ceil((endOfQueue(day) - first) / MINUTE));
}

/** Nothing need stand longer than this. Minutes. */
function longestStanding(day: Day): number {
  const steps = day.jobs.flatMap((job) => job.steps);
  const first = Math.min(day.now, ...steps.map(({ fixedStart }) => fixedStart ?? day.now));
  const last = Math.max(endOfQueue(day), ...day.jobs.map(({ readyBy }) => readyBy));
  return Math.ceil((last - first) / MINUTE) + longestLate(day);
}

/** Tries whole minutes for some of the jobs, all else as in `give`: half of one is nobody's. */
const minutesProbe =
  (day: Day, give: Give, what: ByJob, jobs: readonly Job[]): Probe =>
  (most) => {
    const minutes = Math.floor(most);
    const some = new Map([...give[what], ...forAll(jobs, minutes)]);
    return fitWith(day, { ...give, [what]: some }) === undefined ? undefined : minutes;
  };

function extraProbe(day: Day, give: Give, resource: string): Probe {
  const there = day.limits.capacity[resource] ?? 0;
  return (most) => {
    const fit = fitWith(day, { ...give, extra: new Map(give.extra).set(resource, most) });
    if (fit === undefined) return undefined;
    const peak = peakOn(fit.network, fit.network.resources.indexOf(resource), fit.starts);
    // Sums of amounts carry noise: 15 digits are more than any scale shows.
    return Math.max(0, Number((peak.amount - there).toPrecision(12)));
  };
}

/** Gives back what single jobs do not need; those promised first before the others. */
function giveBack(day: Day, give: Give, what: ByJob): Give {
  // Often none of them needs any.
  const none = { ...give, [what]: forAll(day.jobs, 0) };
  if (fitWith(day, none) !== undefined) return none;
  let so = give;
  for (const job of day.jobs.toSorted((a, b) => a.readyBy - b.readyBy)) {
    const most = so[what].get(job.id) ?? 0;
    const probe = minutesProbe(day, so, what, [job]);
    const minutes = probe(0) ?? narrow(most, minuteOr(day, ROUGH_EACH), probe) ?? most;
    so = { ...so, [what]: new Map(so[what]).set(job.id, minutes) };
  }
  return so;
}

/** A bound that gives way alone: all others hold. */
export interface Alone {
  readonly breaks: string;
  readonly give: Give;
  /** A placing that fits then, where one is known already; by task, epoch ms. */
  readonly starts?: Float64Array;
}

/** One resource, if more of it were enough, and the share of it that lacks. */
function resourceAlone(day: Day, name: string): readonly (Alone & { readonly share: number })[] {
  const unit = unitOf(day, name);
  const probe = extraProbe(day, NO_GIVE, name);
  const by = narrow(Number.POSITIVE_INFINITY, () => unit, probe);
  if (by === undefined) return [];
  const share = by / (day.limits.capacity[name] ?? 0);
  return [{ share, breaks: name, give: { ...NO_GIVE, extra: new Map([[name, by]]) } }];
}

/** On a large day one good way to be late will do: halving for each job would take its time. */
function lateAlone(day: Day): readonly Alone[] {
  const most = longestLate(day);
  const turned = isLarge(day) ? lateInTurn(day, most) : undefined;
  if (turned === undefined) return minutesAlone(day, "late", most);
  const { late, starts } = turned;
  return [{ breaks: "time", give: { ...NO_GIVE, late }, starts }];
}

/** Minutes, if more of them were enough, given to the jobs that need them. */
function minutesAlone(day: Day, what: ByJob, most: number): readonly Alone[] {
  const by = narrow(most, minuteOr(day, ROUGH), minutesProbe(day, NO_GIVE, what, day.jobs));
  if (by === undefined) return [];
  const give = giveBack(day, { ...NO_GIVE, [what]: forAll(day.jobs, by) }, what);
  return [{ breaks: what === "late" ? "time" : what, give }];
}

/**
 * Each bound that would be enough if it gave way alone, and by how little.
 *
 * @param day - one that does not fit
 * @returns resources first, those that lack the smallest share before the others
 */
export function aloneEnough(day: Day): readonly Alone[] {
  const resources = Object.keys(day.limits.capacity).flatMap((name) => resourceAlone(day, name));
  return [
    ...resources.sort((a, b) => a.share - b.share).map(({ breaks, give }) => ({ breaks, give })),
    ...lateAlone(day),
    ...minutesAlone(day, "standing", longestStanding(day)),
  ];
}

/**
 * What must give way at the least so that the day has a plan: time alone where that is enough, and
 * only of the jobs that need it; else standing alone; else as little as may be of everything, where
 * nothing that is short is counted on as long as being late helps.
 */
export function leastGive(day: Day, alone: readonly Alone[]): Give {
  const wait = alone.find(({ breaks }) => breaks === "time" || breaks === "standing");
  if (wait !== undefined) return wait.give;
  const names = Object.keys(day.limits.capacity);
  let enough: Give = {
    late: forAll(day.jobs, longestLate(day)),
    standing: forAll(day.jobs, longestStanding(day)),
    extra: new Map(names.map((name) => [name, Number.POSITIVE_INFINITY])),
  };
  for (const name of names) {
    const unit = unitOf(day, name);
    const probe = extraProbe(day, enough, name);
    const by = probe(0) ?? narrow(Number.POSITIVE_INFINITY, () => unit, probe);
    if (by !== undefined) enough = { ...enough, extra: new Map(enough.extra).set(name, by) };
  }
  return giveBack(day, giveBack(day, enough, "standing"), "late");
}
