import { expect, test } from "vitest";
import type { Job, JobStep, Limits } from "../../../../core/board/schedule/job.ts";
import { scheduleJobs } from "../../../../core/board/schedule/plan-day.ts";
import { workForQuiet } from "../../../../core/board/schedule/quiet.ts";
import { replanDay } from "../../../../core/board/schedule/replan-day.ts";

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

test("while nobody is in there is nothing to do; the stretch is told from when somebody is", () => {
  const away = (to: number) => ({
    capacity: { person: 1 },
    taken: [{ resource: "person", amount: 1, from: at(-60), to: at(to) }],
  });
  const syrup = job("syrup", 400, hands("stir", 15));
  expect(quiet([syrup], away(100))).toMatchObject({
    span: { from: at(100), to: at(385) },
    work: [{ job: "syrup", step: "stir", latestStart: at(385) }],
  });
  // Nobody comes before the stirring has to begin: the stretch itself is as quiet as it was.
  expect(quiet([syrup], away(385))).toMatchObject({ span: { from: NOW, to: at(385) }, work: [] });
});

test("a full fridge keeps nobody out, nor does one of two who are away; absences may be told in any order", () => {
  const syrup = job("syrup", 400, hands("stir", 15));
  const gone = (resource: string, amount: number, from: number, to: number) => ({
    resource,
    amount,
    from: at(from),
    to: at(to),
  });
  const within = (person: number, ...taken: readonly ReturnType<typeof gone>[]) =>
    quiet([syrup], { capacity: { person, fridge: 10 }, taken }).span.from;
  expect(within(1, gone("fridge", 10, -60, 100))).toBe(NOW);
  expect(within(2, gone("person", 1, -60, 100))).toBe(NOW);
  expect(within(2, gone("person", 2, -60, 100))).toBe(at(100));
  const night = [gone("person", 1, 100, 200), gone("person", 1, -60, 100)];
  expect(within(1, ...night)).toBe(at(200));
  expect(within(1, ...night.toReversed())).toBe(at(200));
  expect(within(1, gone("person", 1, 0, 50))).toBe(at(50));
});

test("what needs a stand that is in use, or may not begin yet, is not offered", () => {
  const stand = [{ resource: "stand", amount: 1 }];
  const dripping = job("wash", 900, wait("drip", 300, { fixedStart: at(-10), uses: stand }));
  const filter = job("other", 900, hands("filter", 10, { uses: stand }));
  const stands = (count: number) => ({ capacity: { person: 1, stand: count } });
  expect(quiet([dripping, filter], stands(1)).work).toEqual([]);
  expect(quiet([dripping, filter], stands(2)).work).toHaveLength(1);
  const later = { ...job("later", 900, hands("chop", 10)), earliest: at(60) };
  expect(quiet([later]).work).toEqual([]);
});

test("nothing that is placed has to move for it", () => {
  // Begun now, the second batch would have to be filtered at 90, when the first one is to be.
  const second = job(
    "second",
    400,
    hands("pour", 5),
    wait("rest", 85),
    hands("filter", 10, { mayWaitBefore: 0 }),
  );
  const first = job("first", 100, wait("rest", 60, { fixedStart: at(-20) }), hands("filter", 10));
  expect(quiet([first, second]).work).toEqual([]);
  const patient = { ...second, steps: second.steps.map(({ mayWaitBefore: _, ...step }) => step) };
  expect(quiet([first, patient]).work.map(({ job: id }) => id)).toEqual(["second"]);
});

test("what is to be done before the stretch is not put off into it", () => {
  const jobs = [job("now", 400, hands("stir", 10)), job("syrup", 400, hands("stir", 15))];
  const limits = { capacity: { person: 1 } };
  const placed = [{ job: "now", step: "stir", startAt: NOW, endAt: at(10) }];
  const { plan } = replanDay({ before: { placed }, jobs, limits, now: NOW });
  if (!plan.ok) throw new RangeError("the day must plan");
  const { span, work } = workForQuiet(plan, jobs, limits, NOW);
  expect(span.from).toBe(at(10));
  expect(work.map(({ job: id }) => id)).toEqual(["syrup"]);
});

test("somebody who has less time than the stretch is long", () => {
  const syrup = job("syrup", 400, hands("stir", 15));
  const juice = job("juice", 300, hands("press", 25));
  const jobs = [syrup, juice];
  const limits = { capacity: { person: 1 } };
  const plan = scheduleJobs(jobs, limits, NOW);
  if (!plan.ok) throw new RangeError("the day must plan");
  const { span, work } = workForQuiet(plan, jobs, limits, NOW, 20 * MINUTE);
  expect(span).toEqual({ from: NOW, to: at(20) });
  expect(work.map(({ job: id }) => id)).toEqual(["syrup"]);
});

test("on a day that does not fit, work that makes it no worse is still offered", () => {
  const late = job("late", 30, wait("rest", 60, { fixedStart: at(-20) }), hands("filter", 10));
  const syrup = job("syrup", 400, hands("stir", 15));
  const limits = { capacity: { person: 1 } };
  const plan = scheduleJobs([late, syrup], limits, NOW);
  if (plan.ok) throw new RangeError("the day must not plan");
  const { work } = workForQuiet(plan.least, [late, syrup], limits, NOW);
  expect(work.map(({ job: id }) => id)).toEqual(["syrup"]);
});
