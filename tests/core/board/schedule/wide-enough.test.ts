import fc from "fast-check";
import { expect, test } from "vitest";
import { scheduleJobs } from "../../../../core/board/schedule/plan-day.ts";
import { wideEnough } from "../../../../core/board/schedule/wide-enough.ts";
import { anyJob, anyLimits, bruteForce, SLOT } from "./brute-force.ts";
import { at, hands, job, limits, use, wait } from "./small-days.ts";

const NOW = 3 * SLOT;
const place = (job: string, step: string, from: number, to: number) => ({
  job,
  step,
  startAt: at(from),
  endAt: at(to),
});

test("a day that keeps to its bounds stays as it is", () => {
  const jobs = [job("a", 100, [wait("rest", 20), hands("filter", 10, { mayWaitBefore: at(5) })])];
  const day = { jobs, limits: limits({ stand: 2 }), now: at(0) };
  expect(wideEnough(day, [place("a", "rest", 65, 85), place("a", "filter", 90, 100)])).toEqual(day);
});

// Worked by hand, minutes.
test("late, standing and more in use than there is: just so much is allowed", () => {
  const jobs = [
    job("a", 100, [wait("rest", 20), hands("filter", 10, { mayWaitBefore: at(5) })]),
    job("b", 100, [hands("chop", 30, { uses: [use("board", 1.5)] })]),
    job("c", 120, [hands("label", 5)]),
  ];
  const day = { jobs, limits: limits({ board: 1, stand: 2 }), now: at(0) };
  const placed = [
    place("a", "rest", 70, 90),
    place("a", "filter", 98, 108),
    place("b", "chop", 70, 100),
    place("c", "label", 40, 45),
  ];
  const wide = wideEnough(day, placed);
  expect(wide.jobs.map(({ readyBy }) => readyBy)).toEqual([at(108), at(100), at(120)]);
  expect(wide.jobs[0]?.steps.map(({ mayWaitBefore }) => mayWaitBefore)).toEqual([undefined, at(8)]);
  // Two people from 98 to 100.
  expect(wide.limits.capacity).toEqual({ person: 2, board: 1.5, stand: 2 });
});

test("the least of any bad day is a plan of the day made wide enough", () => {
  let bad = 0;
  fc.assert(
    fc.property(fc.tuple(anyJob("a", NOW), anyJob("b", NOW)), anyLimits(NOW), (jobs, within) => {
      const plan = scheduleJobs(jobs, within, NOW);
      if (plan.ok) return;
      bad += 1;
      const wide = wideEnough({ jobs, limits: within, now: NOW }, plan.least.placed);
      expect(bruteForce(wide.jobs, wide.limits, NOW)).toBeDefined();
    }),
    { numRuns: 120 },
  );
  expect(bad).toBeGreaterThan(30);
});
