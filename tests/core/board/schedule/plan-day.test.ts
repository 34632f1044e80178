import { expect, test } from "vitest";
import type { Job, Limits } from "../../../../core/board/schedule/job.ts";
import { type NoPlan, scheduleJobs } from "../../../../core/board/schedule/plan-day.ts";
import { SLOT } from "./brute-force.ts";
import { at, hands, job, limits, use, wait } from "./small-days.ts";

const HOUR = 60;

/** The plan of jobs that must work out, as minutes by job and step. */
function minutesOf(jobs: readonly Job[], within: Limits, now = 0): Record<string, number> {
  const plan = scheduleJobs(jobs, within, now);
  if (!plan.ok) throw new RangeError(`no plan: ${plan.breaks} by ${plan.by}`);
  expect(plan.late).toEqual([]);
  expect(plan.stood).toEqual([]);
  return Object.fromEntries(
    plan.placed.map(({ job, step, startAt }) => [`${job} ${step}`, startAt / SLOT]),
  );
}

function refusedPlan(jobs: readonly Job[], within: Limits, now = 0): NoPlan {
  const plan = scheduleJobs(jobs, within, now);
  if (plan.ok) throw new RangeError("there is a plan");
  return plan;
}

test("nothing to do is a plan", () => {
  const plan = scheduleJobs([], limits(), at(5));
  expect(plan).toMatchObject({ ok: true, placed: [], latestStart: [], handsOnWindows: [] });
  expect(plan).toMatchObject({ nextQuiet: { from: at(5) }, proved: true });
  expect(plan).not.toHaveProperty("quietUntil");
});

// Worked by hand, minutes.
test("a batch alone starts as late as its steps allow, all in a row", () => {
  const wash = job("a", 600, [
    hands("build", 10),
    wait("rest", 60),
    wait("drip", 300),
    hands("bottle", 20),
  ]);
  expect(minutesOf([wash], limits())).toEqual({
    "a build": 210,
    "a rest": 220,
    "a drip": 280,
    "a bottle": 580,
  });
});

test("one person bottles one batch after the other", () => {
  const two = ["a", "b"].map((id) => job(id, 100, [wait("drip", 30), hands("bottle", 20)]));
  const starts = minutesOf(two, limits());
  expect([starts["a bottle"], starts["b bottle"]].sort()).toEqual([60, 80]);
  expect(minutesOf(two, limits({ person: 2 }))).toMatchObject({ "a bottle": 80, "b bottle": 80 });
});

test("what may not stand takes the steps before it along", () => {
  const curd = (mayWaitBefore: number) =>
    job("a", 100, [
      hands("pour", 5),
      wait("rest", 20, { mayWaitBefore: 0 }),
      hands("filter", 5, { mayWaitBefore }),
    ]);
  const busy = job("b", 100, [hands("bottle", 40)]);
  const stands = { "a pour": 50, "a rest": 55, "a filter": 95, "b bottle": 55 };
  expect(minutesOf([curd(at(20)), busy], limits())).toEqual(stands);
  const inOneGo = { "a pour": 70, "a rest": 75, "a filter": 95, "b bottle": 30 };
  expect(minutesOf([curd(at(19)), busy], limits())).toEqual(inOneGo);
});

test("a stand is held over the idle time between the steps that hold it", () => {
  const hold = [{ resource: "stand", amount: 1, fromStep: "filter", toStep: "take-off" }];
  const dripping = (id: string) =>
    job(id, 100, [hands("filter", 5), wait("drip", 20), hands("take-off", 5)], hold);
  const busy = job("c", 100, [hands("label", 30)]);
  const starts = minutesOf([dripping("a"), dripping("b"), busy], limits({ stand: 1 }));
  const [first, second] = [starts["a filter"] ?? 0, starts["b filter"] ?? 0];
  expect(Math.abs(first - second)).toBeGreaterThanOrEqual(30);
});

test("nobody is wanted while nobody is in", () => {
  const wash = job("a", 24 * HOUR, [
    hands("filter", 10),
    wait("drip", 8 * HOUR),
    hands("bottle", 20),
  ]);
  const night = { resource: "person", amount: 1, from: at(8 * HOUR), to: at(20 * HOUR) };
  const within = { ...limits(), taken: [night] };
  expect(minutesOf([wash], within)).toEqual({
    "a filter": 8 * HOUR - 10,
    "a drip": 16 * HOUR - 20,
    "a bottle": 24 * HOUR - 20,
  });
  const atOnce = wash.steps.map((step) => ({ ...step, mayWaitBefore: 0 }));
  const broken = refusedPlan([{ ...wash, steps: atOnce }], { ...within }, at(HOUR));
  // Nobody could bottle what is filtered before 8:00, so it is filtered at 20:00: 510 minutes more.
  expect(broken).toMatchObject({ breaks: "person", by: 1, job: "a" });
  expect(broken.instead).toContainEqual({ breaks: "time", by: at(270), job: "a" });
});

test.each([
  [10, { breaks: "time", by: at(5), job: "a" }],
  [200, { breaks: "time", by: at(195), job: "a" }],
])("begun at minute %i it is late by so much", (now, lacks) => {
  const short = job("a", 35, [hands("build", 10), wait("rest", 20)]);
  const plan = refusedPlan([short], limits(), at(now));
  expect(plan).toMatchObject({ ...lacks, instead: [], also: [], proved: true });
  expect(plan.least.late).toEqual([{ job: "a", byMs: lacks.by }]);
});

test("a ready-by long past is late by the whole work, and later jobs still come on time", () => {
  const past = job("past", 10, [hands("build", 10)]);
  const fresh = job("fresh", 200, [hands("build", 10)]);
  const plan = refusedPlan([fresh, past], limits(), at(100));
  expect(plan).toMatchObject({ breaks: "time", by: at(100), job: "past" });
  expect(plan.least.late).toEqual([{ job: "past", byMs: at(100) }]);
});

test("says which resource is short, by how much, and for which job", () => {
  const big = job("big", 100, [wait("chill", 10, { uses: [use("fridge", 46)] })]);
  expect(refusedPlan([big], limits({ fridge: 40 }))).toMatchObject({
    breaks: "fridge",
    by: 6,
    job: "big",
    instead: [],
  });
  const chilled = (id: string, litres: number) =>
    job(id, 100, [wait("chill", 60, { uses: [use("fridge", litres)] })]);
  const three = [chilled("a", 25), chilled("b", 14), chilled("c", 4.5)];
  const short = refusedPlan(three, limits({ fridge: 40 }));
  expect(short).toMatchObject({ breaks: "fridge", by: 3.5, job: "c", proved: true });
  expect(short.instead).toEqual([{ breaks: "time", by: at(20), job: expect.any(String) }]);
});

test("says what lacks together where nothing would be enough alone", () => {
  const steps = [
    hands("blend", 10, { uses: [use("blender", 2)] }),
    wait("chill", 10, { uses: [use("fridge", 3)] }),
  ];
  const plan = refusedPlan([job("a", 100, steps)], limits({ blender: 1, fridge: 1 }));
  expect([plan, ...plan.also]).toMatchObject([
    { breaks: "blender", by: 1, job: "a" },
    { breaks: "fridge", by: 2, job: "a" },
  ]);
  expect(plan.instead).toEqual([]);
  expect(plan.least.late).toEqual([]);
});

test("two waits that end at once and may not stand: one stands, or somebody helps", () => {
  const running = (id: string) =>
    job(id, 100, [
      wait("rest", 20, { fixedStart: at(0) }),
      hands("filter", 10, { mayWaitBefore: 0 }),
    ]);
  const plan = refusedPlan([running("a"), running("b")], limits(), at(10));
  expect(plan).toMatchObject({ breaks: "person", by: 1 });
  expect(plan.instead).toEqual([{ breaks: "standing", by: at(10), job: expect.any(String) }]);
  expect(plan.least.stood).toEqual([{ job: expect.any(String), step: "filter", byMs: at(10) }]);
});

test("what has begun stands, though it is more than there should be", () => {
  const drips = ["a", "b"].map((id) =>
    job(id, 60, [
      wait("drip", 20, { fixedStart: at(0), uses: [use("stand", 1)] }),
      hands("bottle", 5),
    ]),
  );
  const next = job("c", 60, [wait("drip", 20, { uses: [use("stand", 1)] }), hands("bottle", 5)]);
  expect(minutesOf([...drips, next], limits({ stand: 1 }), at(10))["c drip"]).toBe(25);
});

test.each([
  [[job("a", 10, [])], limits()],
  [[job("a", 10, [hands("x", 1)]), job("a", 10, [hands("x", 1)])], limits()],
  [[job("a", Number.NaN, [hands("x", 1)])], limits()],
  [[job("a", 10, [hands("x", -1)])], limits()],
  [[], limits({ time: 1 })],
])("refuses what only we can have got wrong", (jobs, within) => {
  expect(() => scheduleJobs(jobs, within, at(0))).toThrow(RangeError);
});
