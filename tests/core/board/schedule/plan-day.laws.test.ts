import fc from "fast-check";
import { expect, test } from "vitest";
import type { Job, Limits } from "../../../../core/board/schedule/job.ts";
import { type Shortfall, scheduleJobs } from "../../../../core/board/schedule/plan-day.ts";
import { anyJob, anyLimits, bruteForce, fitsTogether, SLOT } from "./brute-force.ts";
import { at, hands, job, limits, wait } from "./small-days.ts";

const NOW = 3 * SLOT;

const startsIn = (
  plan: { readonly placed: readonly { job: string; startAt: number }[] },
  of: Job,
) => plan.placed.filter((one) => one.job === of.id).map(({ startAt }) => startAt / SLOT);

const someJobs = (most: number, mostSteps: number): fc.Arbitrary<Job[]> =>
  fc
    .integer({ min: 1, max: most })
    .chain((count) =>
      fc.tuple(...Array.from({ length: count }, (_, i) => anyJob(`j${i}`, NOW, mostSteps))),
    );

test("finds a plan where brute force does, and starts as late as it", { timeout: 60_000 }, () => {
  const seen = { plans: 0, none: 0 };
  fc.assert(
    fc.property(someJobs(3, 3), anyLimits(NOW), (jobs, within) => {
      const best = bruteForce(jobs, within, NOW);
      const plan = scheduleJobs(jobs, within, NOW);
      expect(plan.proved).toBe(true);
      expect(plan.ok).toBe(best !== undefined);
      seen[plan.ok ? "plans" : "none"] += 1;
      if (!plan.ok) return;
      const worth = plan.latestStart.reduce((sum, { startAt }) => sum + startAt / SLOT, 0);
      expect(worth).toBe(best?.worth);
      const starts = jobs.map((one) => startsIn(plan, one));
      expect(fitsTogether(jobs, starts, within, NOW)).toBe(true);
    }),
    { numRuns: 250 },
  );
  expect(Math.min(seen.plans, seen.none)).toBeGreaterThan(50);
});

/** The day with one bound given way by so much. */
function given(jobs: readonly Job[], within: Limits, { breaks, by }: Shortfall) {
  if (breaks === "time")
    return { jobs: jobs.map((one) => ({ ...one, readyBy: one.readyBy + by })), within };
  if (breaks === "standing") {
    const steps = (one: Job) =>
      one.steps.map((step) =>
        step.mayWaitBefore === undefined
          ? step
          : { ...step, mayWaitBefore: step.mayWaitBefore + by },
      );
    return { jobs: jobs.map((one) => ({ ...one, steps: steps(one) })), within };
  }
  const capacity = { ...within.capacity, [breaks]: (within.capacity[breaks] ?? 0) + by };
  return { jobs, within: { ...within, capacity } };
}

test("what it lacks is enough, and a little less is not", { timeout: 60_000 }, () => {
  const seen = new Map<string, number>();
  fc.assert(
    fc.property(someJobs(2, 3), anyLimits(NOW), (jobs, within) => {
      const plan = scheduleJobs(jobs, within, NOW);
      if (plan.ok || plan.also.length > 0) return;
      for (const lacks of [plan, ...plan.instead]) {
        seen.set(lacks.breaks, (seen.get(lacks.breaks) ?? 0) + 1);
        const unit = ["time", "standing"].includes(lacks.breaks) ? SLOT : 1;
        const enough = given(jobs, within, lacks);
        const less = given(jobs, within, { ...lacks, by: lacks.by - unit });
        expect(bruteForce(enough.jobs, enough.within, NOW)).toBeDefined();
        expect(bruteForce(less.jobs, less.within, NOW)).toBeUndefined();
        expect(jobs.map(({ id }) => id)).toContain(lacks.job);
      }
    }),
    // What was seen is told below: the same days each time.
    { numRuns: 200, seed: 1 },
  );
  expect([...seen.keys()].sort()).toEqual(["fridge", "person", "stand", "standing", "time"]);
});

test("the plan that makes the least of it is late by no more than it says", () => {
  fc.assert(
    fc.property(someJobs(3, 3), anyLimits(NOW), (jobs, within) => {
      const plan = scheduleJobs(jobs, within, NOW);
      if (plan.ok) return;
      const time = [plan, ...plan.instead, ...plan.also].find(({ breaks }) => breaks === "time");
      if (time === undefined) return;
      expect(Math.max(...plan.least.late.map(({ byMs }) => byMs))).toBe(time.by);
      if (plan.also.length > 0) return;
      const starts = jobs.map((one) => startsIn(plan.least, one));
      expect(fitsTogether(jobs, starts, within, NOW)).toBe(true);
      expect(plan.least.stood).toEqual([]);
    }),
    { numRuns: 200 },
  );
});

test("the order in which jobs are told changes no start taken together", () => {
  fc.assert(
    fc.property(someJobs(3, 2), anyLimits(NOW), (jobs, within) => {
      const worth = (of: readonly Job[]): number | undefined => {
        const plan = scheduleJobs(of, within, NOW);
        return plan.ok
          ? plan.latestStart.reduce((sum, { startAt }) => sum + startAt, 0)
          : undefined;
      };
      expect(worth(jobs.toReversed())).toBe(worth(jobs));
    }),
    { numRuns: 100 },
  );
});

test("twenty batches fit into a week, and none breaks a bound", () => {
  const wash = (i: number) =>
    job(
      `b${i}`,
      (i % 5) * 1440 + 1440 + (i % 3) * 60,
      [
        hands("build", 20),
        wait("rest", 60, { mayWaitBefore: 0 }),
        hands("filter", 10, { mayWaitBefore: at(120) }),
        wait("drip", 240 + 30 * (i % 4), { mayWaitBefore: 0 }),
        hands("bottle", 20),
      ],
      [{ resource: "stand", amount: 1, fromStep: "filter", toStep: "drip" }],
    );
  const jobs = Array.from({ length: 20 }, (_, i) => wash(i));
  const within = limits({ stand: 2 });
  const plan = scheduleJobs(jobs, within, at(0));
  if (!plan.ok) throw new RangeError(`no plan: ${plan.breaks} by ${plan.by}`);
  const starts = jobs.map((one) => startsIn(plan, one));
  expect(fitsTogether(jobs, starts, within, at(0))).toBe(true);
  expect([plan.late, plan.stood]).toEqual([[], []]);
  expect(plan.placed.every(({ startAt }) => startAt >= 0)).toBe(true);
  expect(scheduleJobs(jobs, within, at(0))).toEqual(plan);
});
