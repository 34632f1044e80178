import { expect, test } from "vitest";
import type { DayPlan, PlacedStep } from "../../../../core/board/schedule/day-plan.ts";
import type { Job } from "../../../../core/board/schedule/job.ts";
import { scheduleJobs } from "../../../../core/board/schedule/plan-day.ts";
import { replanDay } from "../../../../core/board/schedule/replan-day.ts";
import { carriedOut } from "./reality.ts";
import { at, hands, job, limits, use, wait } from "./small-days.ts";

const HOUR = 60;
const dayOf = (plan: ReturnType<typeof scheduleJobs>): DayPlan => (plan.ok ? plan : plan.least);
const atOnce = { mayWaitBefore: 0 };

/** A wash: built, dripping for hours on a stand, then measured, topped up and bottled. Minutes. */
const wash = (id: string, readyBy: number, drip = 4 * HOUR): Job =>
  job(
    id,
    readyBy,
    [
      hands("build", 20),
      hands("wet-filter", 10),
      wait("slow-drip", drip, atOnce),
      hands("yield", 5),
      hands("top-up", 5),
      hands("bottle", 20),
    ],
    [{ ...use("stand", 1), fromStep: "wet-filter", toStep: "slow-drip" }],
  );

const starts = (plan: DayPlan, job: string): Readonly<Record<string, number>> =>
  Object.fromEntries(
    plan.placed
      .filter((one) => one.job === job)
      .map(({ step, startAt }) => [step, startAt / at(1)]),
  );

/** One stand: Pear drips on it from 8:20 on, Hibiscus needs it after that. */
const TWO = [wash("pear", 14 * HOUR), wash("hibiscus", 19 * HOUR)];
const ONE_STAND = limits({ stand: 1 });
const announced = dayOf(scheduleJobs(TWO, ONE_STAND, at(6 * HOUR)));

/** The day at 11:00, with Pear's drip so many minutes slower. */
function atEleven(slow: number, jobs = TWO, within = ONE_STAND) {
  const before = { placed: announced.placed };
  const now = at(11 * HOUR);
  const slowBy = (id: string, step: string) =>
    id === "pear" && step === "slow-drip" ? at(slow) : 0;
  const stand = carriedOut(jobs, announced.placed, now, { slowBy });
  return replanDay({ before, jobs: stand, limits: within, now });
}

test("the day as announced, worked by hand", () => {
  expect(starts(announced, "pear")).toMatchObject({
    "wet-filter": 9.5 * HOUR - 10,
    "slow-drip": 9.5 * HOUR,
    yield: 13.5 * HOUR,
    bottle: 14 * HOUR - 20,
  });
  expect(starts(announced, "hibiscus")).toMatchObject({
    "wet-filter": 14.5 * HOUR - 10,
    "slow-drip": 14.5 * HOUR,
    yield: 18.5 * HOUR,
  });
});

test("all goes as planned: nothing moves", () => {
  const { plan, moved } = atEleven(0);
  expect(plan.ok).toBe(true);
  expect(moved).toEqual([]);
});

test("a drip two hours slow pushes its own yield, top-up and bottle, and another batch's stand", () => {
  // Both have time: Pear until 16:30, Hibiscus until 20:00 and one more person on the stand.
  const later = [wash("pear", 16.5 * HOUR), wash("hibiscus", 20.5 * HOUR)];
  const { plan, moved } = atEleven(2 * HOUR, later);
  expect(plan.ok).toBe(true);
  const because = { job: "pear", step: "slow-drip" };
  const found = Object.fromEntries(
    moved.map(({ job, step, byMs, because: why }) => [`${job} ${step}`, [byMs / at(1), why]]),
  );
  // Pear is through at 15:30 instead of 13:30, and its work is as late as can be then: from 16:00.
  expect(found["pear yield"]?.[1]).toEqual(because);
  expect(found["pear top-up"]?.[1]).toEqual(because);
  expect(found["pear bottle"]?.[1]).toEqual(because);
  // Hibiscus had the stand from 14:20 on; now it has it from 15:30 at the soonest.
  expect(found["hibiscus wet-filter"]?.[1]).toEqual(because);
  expect(found["hibiscus slow-drip"]?.[1]).toEqual(because);
  const after = starts(dayOf(plan), "hibiscus");
  expect(after["wet-filter"]).toBeGreaterThanOrEqual(15.5 * HOUR);
  expect(moved.map(({ byMs }) => Math.abs(byMs))).toEqual(
    moved.map(({ byMs }) => Math.abs(byMs)).toSorted((a, b) => b - a),
  );
  expect(moved.some(({ step }) => step === "build" || step === "wet-filter")).toBe(true);
  expect(moved.filter(({ job }) => job === "pear").map(({ step }) => step)).not.toContain("build");
});

test("a second stand: the other batch does not move", () => {
  const later = [wash("pear", 16.5 * HOUR), wash("hibiscus", 19 * HOUR)];
  const { moved } = atEleven(2 * HOUR, later, limits({ stand: 2 }));
  expect(new Set(moved.map(({ job }) => job))).toEqual(new Set(["pear"]));
});

test("a day that no longer fits says what breaks and by how much", () => {
  const { plan, moved } = atEleven(2 * HOUR);
  if (plan.ok) throw new RangeError("there is a plan");
  // Pear is through at 15:30, half an hour of work after it: ready at 16:00 instead of 14:00. Only
  // then has somebody time for Hibiscus: dripping from 16:10 to 20:10, ready at 20:40, not at 19:00.
  expect(plan).toMatchObject({ breaks: "time", by: at(2 * HOUR), job: "pear" });
  expect(plan.least.late).toEqual([
    { job: "pear", byMs: at(2 * HOUR) },
    { job: "hibiscus", byMs: at(100) },
  ]);
  // No other stand and nobody else would help Pear.
  expect(plan.instead).toEqual([]);
  const because = { job: "pear", step: "slow-drip" };
  expect(moved).toContainEqual(
    expect.objectContaining({ job: "hibiscus", step: "wet-filter", byMs: at(100), because }),
  );
});

test("on a day that does not fit, what was told stays too, and what it lacks is told of that", () => {
  // Both were to be ready by 60 and have to be by 50 now: one of them is 10 late.
  const jobs = [job("a", 50, [hands("chop", 50)]), job("b", 50, [hands("label", 10)])];
  for (const [first, second, late] of [
    [0, 50, "b"],
    [10, 0, "a"],
  ] as const) {
    const placed: readonly PlacedStep[] = [
      { job: "a", step: "chop", startAt: at(first), endAt: at(first + 50) },
      { job: "b", step: "label", startAt: at(second), endAt: at(second + 10) },
    ];
    const { plan, moved } = replanDay({ before: { placed }, jobs, limits: limits(), now: at(0) });
    expect(moved).toEqual([]);
    expect(plan).toMatchObject({ ok: false, breaks: "person", instead: [{ breaks: "time" }] });
    if (plan.ok) return;
    expect(plan.instead).toEqual([{ breaks: "time", by: at(10), job: late }]);
    expect(plan.least.late).toEqual([{ job: late, byMs: at(10) }]);
  }
});

test("nor does work move on a day on which something has to stand", () => {
  const running = (id: string) =>
    job(id, 400, [
      wait("rest", 20, { fixedStart: at(0) }),
      hands("filter", 10, { mayWaitBefore: 0 }),
    ]);
  const tied = ["c", "d"].map((id) => job(id, 100, [hands("label", 20)]));
  for (const [first, second] of [
    [60, 80],
    [80, 60],
  ] as const) {
    const placed: readonly PlacedStep[] = [
      { job: "c", step: "label", startAt: at(first), endAt: at(first + 20) },
      { job: "d", step: "label", startAt: at(second), endAt: at(second + 20) },
    ];
    const { plan, moved } = replanDay({
      before: { placed },
      jobs: [running("a"), running("b"), ...tied],
      limits: limits(),
      now: at(10),
    });
    expect(plan.ok).toBe(false);
    expect(dayOf(plan).stood).toHaveLength(1);
    expect(moved).toEqual([]);
  }
});

test("what is overdue and not begun pushes what comes after it, and is pushed by nobody", () => {
  const one = [job("a", 100, [hands("build", 20), hands("bottle", 20)])];
  const before = dayOf(scheduleJobs(one, limits(), at(0)));
  expect(starts(before, "a")).toEqual({ build: 60, bottle: 80 });
  const late = one.map((each) => ({ ...each, readyBy: at(130) }));
  const { moved } = replanDay({ before, jobs: late, limits: limits(), now: at(75) });
  const by = { job: "a", byMs: at(30) };
  expect(moved).toEqual([
    { ...by, step: "build", startAt: at(90) },
    { ...by, step: "bottle", startAt: at(110), because: { job: "a", step: "build" } },
  ]);
});

test("announced work stays though another plan starts as late; what is new goes around it", () => {
  const two = ["a", "b"].map((id) => job(id, 100, [hands("label", 20)]));
  // Both ways round are equally late: whichever was told stays.
  for (const [first, second] of [
    [60, 80],
    [80, 60],
  ] as const) {
    const placed: readonly PlacedStep[] = [
      { job: "a", step: "label", startAt: at(first), endAt: at(first + 20) },
      { job: "b", step: "label", startAt: at(second), endAt: at(second + 20) },
    ];
    const fresh = job("c", 100, [hands("label", 10)]);
    const { plan, moved } = replanDay({
      before: { placed },
      jobs: [fresh, ...two],
      limits: limits(),
      now: at(0),
    });
    expect(moved).toEqual([]);
    expect(starts(dayOf(plan), "c")).toEqual({ label: 50 });
    expect(plan).toMatchObject({ ok: true, proved: false });
  }
});

test("a batch that has more time now is planned afresh, one that has less stays while it fits", () => {
  const before = { placed: announced.placed, readyBy: { pear: at(14 * HOUR) } };
  const shift = (by: number) => [wash("pear", 14 * HOUR + by), wash("hibiscus", 30 * HOUR)];
  const moves = (minutes: number) =>
    replanDay({ before, jobs: shift(minutes), limits: limits(), now: at(6 * HOUR) }).moved;
  expect(new Set(moves(HOUR).map(({ job, byMs }) => `${job} ${byMs / at(1)}`))).toEqual(
    new Set(["pear 60"]),
  );
  expect(moves(0)).toEqual([]);
});

test("a minute more is more; half a minute is none that anybody would speak of", () => {
  const { placed } = dayOf(scheduleJobs([wash("pear", 14 * HOUR)], limits(), at(6 * HOUR)));
  const before = { placed, readyBy: { pear: at(14 * HOUR) } };
  const moves = (minutes: number) => {
    const jobs = [wash("pear", 14 * HOUR + minutes)];
    return replanDay({ before, jobs, limits: limits(), now: at(6 * HOUR) }).moved;
  };
  expect(new Set(moves(1).map(({ byMs }) => byMs))).toEqual(new Set([at(1)]));
  expect(moves(0.5)).toEqual([]);
});

test("what is made for another batch is ready when that begins", () => {
  const syrup = job("syrup", 19 * HOUR, [hands("stir", 30)]);
  const madeFor = new Map([["syrup", "hibiscus"]]);
  const { plan, jobs } = replanDay({
    before: announced,
    jobs: [...TWO, syrup],
    madeFor,
    limits: ONE_STAND,
    now: at(6 * HOUR),
  });
  const build = starts(dayOf(plan), "hibiscus").build ?? 0;
  expect(jobs.find(({ id }) => id === "syrup")?.readyBy).toBe(at(build));
  expect((starts(dayOf(plan), "syrup").stir ?? 0) + 30).toBeLessThanOrEqual(build);
});
