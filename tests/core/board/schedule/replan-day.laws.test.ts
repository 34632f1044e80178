import fc from "fast-check";
import { expect, test } from "vitest";
import type { DayPlan, PlacedStep } from "../../../../core/board/schedule/day-plan.ts";
import type { Job, Limits } from "../../../../core/board/schedule/job.ts";
import { scheduleJobs } from "../../../../core/board/schedule/plan-day.ts";
import { replanDay } from "../../../../core/board/schedule/replan-day.ts";
import { anyJob, anyLimits, bruteForce, fitsTogether, SLOT } from "./brute-force.ts";
import { carriedOut, stillFits } from "./reality.ts";

const dayOf = (plan: ReturnType<typeof scheduleJobs>): DayPlan => (plan.ok ? plan : plan.least);
const atOnce = { mayWaitBefore: 0 };

const NOW = 3 * SLOT;
/** Days that often fit, though not without giving way: waits begin at once, as those of runs do. */
const roomy = (one: Job): Job => ({
  ...one,
  readyBy: Math.max(one.readyBy, NOW + 7 * SLOT) + 2 * SLOT,
  steps: one.steps.map((step) => ({
    ...step,
    uses: step.uses.map(({ resource, amount }) => ({ resource, amount: Math.min(1, amount) })),
    ...(step.kind === "wait" ? atOnce : {}),
  })),
});

/** Small days, and how they have gone some slots later. */
const anyDay = fc
  .record({
    jobs: fc.tuple(anyJob("a", NOW), anyJob("b", NOW, 2), anyJob("c", NOW, 2)),
    within: anyLimits(NOW),
    later: fc.integer({ min: 0, max: 4 }),
    slow: fc.array(fc.integer({ min: -1, max: 3 }), { minLength: 3, maxLength: 3 }),
    lag: fc.array(fc.constantFrom(0, 0, 0, 2), { minLength: 3, maxLength: 3 }),
  })
  .map(({ within, ...day }) => ({
    ...day,
    jobs: day.jobs.map(roomy),
    within: { ...within, capacity: { ...within.capacity, person: 1 } },
  }));

interface Told {
  readonly jobs: readonly Job[];
  readonly within: Limits;
  readonly now: number;
  readonly before: readonly PlacedStep[];
}

/** Days that had a plan, as they stand some slots on. */
function forDays(runs: number, check: (day: Told) => void): void {
  fc.assert(
    fc.property(anyDay, ({ jobs, within, later, slow, lag }) => {
      const plan = scheduleJobs(jobs, within, NOW);
      if (!plan.ok) return;
      const now = NOW + later * SLOT;
      const turn = (id: string): number => jobs.findIndex((one) => one.id === id);
      const gone = carriedOut(jobs, plan.placed, now, {
        slowBy: (id) => (slow[turn(id)] ?? 0) * SLOT,
        lag: (id) => (lag[turn(id)] ?? 0) * SLOT,
      });
      check({ jobs: gone, within, now, before: plan.placed });
    }),
    // How many days of each kind there were is told below: the same days each time.
    { numRuns: runs, seed: 1 },
  );
}

const begunIn = ({ jobs }: Told): readonly (readonly [string, string, number, number])[] =>
  jobs.flatMap(({ id, steps }) =>
    steps.flatMap(({ id: step, fixedStart, forMs }) =>
      fixedStart === undefined ? [] : [[id, step, fixedStart, fixedStart + forMs] as const],
    ),
  );

test("what has begun is never moved, nor told as moved", { timeout: 60_000 }, () => {
  let begun = 0;
  forDays(200, (day) => {
    const { jobs, within: limits, now, before } = day;
    const { plan, moved } = replanDay({ before: { placed: before }, jobs, limits, now });
    const facts = begunIn(day);
    begun += facts.length;
    for (const [job, step, startAt, endAt] of facts) {
      expect(dayOf(plan).placed).toContainEqual({ job, step, startAt, endAt });
      expect(moved.some((one) => one.job === job && one.step === step)).toBe(false);
    }
  });
  expect(begun).toBeGreaterThan(100);
});

test("fits where brute force does, and as late where it is proved", { timeout: 120_000 }, () => {
  const seen = { fits: 0, not: 0, proved: 0 };
  forDays(300, ({ jobs, within, now, before }) => {
    const { plan } = replanDay({ before: { placed: before }, jobs, limits: within, now });
    const best = bruteForce(jobs, within, now);
    expect(plan.ok).toBe(best !== undefined);
    seen[plan.ok ? "fits" : "not"] += 1;
    if (!plan.ok || best === undefined) return;
    const found = jobs.map(({ id }) =>
      plan.placed.filter((one) => one.job === id).map(({ startAt }) => startAt / SLOT),
    );
    expect(fitsTogether(jobs, found, within, now)).toBe(true);
    expect([plan.late, plan.stood]).toEqual([[], []]);
    const worth = plan.latestStart.reduce((sum, { startAt }) => sum + startAt / SLOT, 0);
    expect(worth).toBeLessThanOrEqual(best.worth);
    if (!plan.proved) return;
    seen.proved += 1;
    expect(worth).toBe(best.worth);
  });
  expect(seen.fits).toBeGreaterThan(100);
  expect(seen.not).toBeGreaterThan(10);
  expect(seen.fits - seen.proved).toBeGreaterThan(10);
});

test("work that still fits where it was announced stays there", { timeout: 60_000 }, () => {
  let stayed = 0;
  forDays(300, ({ jobs, within, now, before }) => {
    if (!stillFits(jobs, before, within, now)) return;
    stayed += 1;
    const { moved } = replanDay({ before: { placed: before }, jobs, limits: within, now });
    const byHand = (id: string, step: string): boolean =>
      jobs.some(
        (one) => one.id === id && one.steps.some((s) => s.id === step && s.kind === "hands-on"),
      );
    expect(moved.filter(({ job, step }) => byHand(job, step))).toEqual([]);
  });
  expect(stayed).toBeGreaterThan(40);
});
