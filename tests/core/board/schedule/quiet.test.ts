import { expect, test } from "vitest";
import type { Job, JobStep, Limits } from "../../../../core/board/schedule/job.ts";
import { scheduleJobs } from "../../../../core/board/schedule/plan-day.ts";
import { workForQuiet } from "../../../../core/board/schedule/quiet.ts";

const MINUTE = 60_000;
const NOW = 1_764_000_000_000;
const at = (minutes: number): number => NOW + minutes * MINUTE;
const hands = (id: string, minutes: number, rest: Partial<JobStep> = {}): JobStep => ({
  id,
  kind: "hands-on",
  forMs: minutes * MINUTE,
  uses: [],
  ...rest,
});
const wait = (id: string, minutes: number, rest: Partial<JobStep> = {}): JobStep => ({
  id,
  kind: "wait",
  forMs: minutes * MINUTE,
  uses: [],
  mayWaitBefore: 0,
  ...rest,
});
const job = (id: string, readyBy: number, ...steps: readonly JobStep[]): Job => ({
  id,
  name: id,
  readyBy: at(readyBy),
  steps,
});

/** A wash that rests for another 40 minutes and is then filtered. */
const resting = job(
  "wash",
  120,
  wait("rest", 60, { fixedStart: at(-20) }),
  hands("filter", 10, { mayWaitBefore: 5 * MINUTE }),
);

function quiet(jobs: readonly Job[], limits: Limits = { capacity: { person: 1 } }) {
  const plan = scheduleJobs(jobs, limits, NOW);
  if (!plan.ok) throw new RangeError(`the test's day must plan, it lacks ${plan.breaks}`);
  return workForQuiet(plan, jobs, limits, NOW);
}

test("what may be begun now and is over before anybody is needed, the most pressing first", () => {
  const syrup = job("syrup", 400, hands("stir", 15));
  const juice = job("juice", 300, hands("press", 20));
  const { span, work } = quiet([resting, syrup, juice]);
  expect(span.from).toBe(NOW);
  expect(span.to).toBeGreaterThanOrEqual(at(40));
  expect(work.map(({ job: id, step, forMs }) => [id, step, forMs])).toEqual([
    ["juice", "press", 20 * MINUTE],
    ["syrup", "stir", 15 * MINUTE],
  ]);
});

test("what is longer than the stretch does not fit", () => {
  const long = job("long", 400, hands("chop", 50));
  expect(quiet([resting, long]).work).toEqual([]);
});

test("what waits for something that is not over yet is not offered", () => {
  const infusion = job(
    "infusion",
    600,
    wait("steep", 90, { fixedStart: at(-10) }),
    hands("strain", 5),
  );
  expect(quiet([resting, infusion]).work).toEqual([]);
});

test("what would then stand longer than it may is not offered", () => {
  const tied = job(
    "tied",
    500,
    hands("measure", 5),
    hands("pour", 5, { mayWaitBefore: 15 * MINUTE }),
  );
  // Somebody is at the filter from then on, so that the pouring could not follow in time.
  const limits = {
    capacity: { person: 1 },
    taken: [{ resource: "person", amount: 1, from: at(5), to: at(35) }],
  };
  expect(quiet([tied], { capacity: { person: 1 } }).work).toHaveLength(1);
  expect(quiet([tied], limits).work).toEqual([]);
});

test("nothing to do, nothing offered", () => {
  const { span, work } = quiet([]);
  expect(span).toEqual({ from: NOW });
  expect(work).toEqual([]);
});
