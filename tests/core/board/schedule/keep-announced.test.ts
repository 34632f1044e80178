import { expect, test } from "vitest";
import type { DayPlan, PlacedStep } from "../../../../core/board/schedule/day-plan.ts";
import type { Job } from "../../../../core/board/schedule/job.ts";
import { keepAnnounced, keepThoughLate } from "../../../../core/board/schedule/keep-announced.ts";
import { at, hands, job, limits, use, wait } from "./small-days.ts";

const told = (job: string, step: string, from: number, to: number): PlacedStep => ({
  job,
  step,
  startAt: at(from),
  endAt: at(to),
});
const label = (id: string, readyBy: number, minutes = 20): Job =>
  job(id, readyBy, [hands("label", minutes)]);
const day = (jobs: readonly Job[], now = 0, within = limits()) => ({
  jobs,
  limits: within,
  now: at(now),
});
const starts = (plan: DayPlan | undefined): Readonly<Record<string, number>> | undefined =>
  plan &&
  Object.fromEntries(
    plan.placed.map(({ job, step, startAt }) => [`${job} ${step}`, startAt / at(1)]),
  );

// Worked by hand, minutes.
test("what was told stays, though it could begin later", () => {
  const plan = keepAnnounced(day([label("a", 100)]), [told("a", "label", 30, 50)]);
  expect(starts(plan)).toEqual({ "a label": 30 });
  expect(plan?.proved).toBe(false);
});

test("what can no longer begin then is as late as can be", () => {
  const plan = keepAnnounced(day([label("a", 100)], 31), [told("a", "label", 30, 50)]);
  expect(starts(plan)).toEqual({ "a label": 80 });
  expect(plan?.proved).toBe(true);
});

test("of two that no longer fit together the one that comes first stays", () => {
  const announced = [told("b", "label", 60, 80), told("a", "label", 50, 55)];
  // a takes 20 minutes now instead of 5.
  const plan = keepAnnounced(day([label("b", 100), label("a", 90)]), announced);
  expect(starts(plan)).toEqual({ "a label": 50, "b label": 80 });
});

test("what finds no room goes before what was told, and that moves", () => {
  const announced = [told("a", "label", 30, 50)];
  const plan = keepAnnounced(day([label("a", 100), label("new", 50, 40)]), announced);
  expect(starts(plan)).toEqual({ "a label": 80, "new label": 10 });
});

test("of one job what still can stay does: a slow drip takes no later window with it", () => {
  const wash = (drip: number) =>
    job("a", 300, [
      wait("drip", drip, { fixedStart: at(0) }),
      hands("yield", 5),
      hands("bottle", 20),
    ]);
  const announced = [
    told("a", "drip", 0, 60),
    told("a", "yield", 60, 65),
    told("a", "bottle", 200, 220),
  ];
  expect(starts(keepAnnounced(day([wash(90)], 10), announced))).toEqual({
    "a drip": 0,
    "a yield": 195,
    "a bottle": 200,
  });
});

test("waits follow the work that stays", () => {
  const wash = job("a", 300, [hands("filter", 10), wait("drip", 100, { mayWaitBefore: 0 })]);
  const announced = [told("a", "filter", 50, 60), told("a", "drip", 60, 140)];
  expect(starts(keepAnnounced(day([wash]), announced))).toEqual({ "a filter": 50, "a drip": 60 });
});

test("no plan is found where time does not reach, or where there never is enough", () => {
  expect(keepAnnounced(day([label("a", 30)], 20), [])).toBeUndefined();
  const big = job("a", 100, [hands("x", 5, { uses: [use("stand", 2)] })]);
  expect(keepAnnounced(day([big], 0, limits({ stand: 1 })), [])).toBeUndefined();
  expect(keepThoughLate(day([big], 0, limits({ stand: 1 })), [], 1000)).toBeUndefined();
});

test("on a day that does not fit one job is late, and only what is in its way moves", () => {
  const wash = job("wash", 100, [wait("drip", 120, { fixedStart: at(0) }), hands("bottle", 20)]);
  const jobs = [label("a", 170), label("b", 300), wash];
  const announced = [
    told("wash", "drip", 0, 80),
    told("wash", "bottle", 80, 100),
    told("a", "label", 125, 145),
    told("b", "label", 200, 220),
  ];
  const plan = keepThoughLate(day(jobs, 10), announced, 1000);
  // Through at 120 instead of 80, and bottled at once.
  expect(plan?.late).toEqual([{ job: "wash", byMs: at(40) }]);
  expect(starts(plan)).toEqual({
    "wash drip": 0,
    "wash bottle": 120,
    "a label": 150,
    "b label": 200,
  });
  expect(keepThoughLate(day(jobs, 10), announced, 39)).toBeUndefined();
});

test("of one job as much stays as can, and the rest is as late as that allows", () => {
  const away = { ...limits(), taken: [{ ...use("person", 1), from: at(30), to: at(60) }] };
  const batch = job("a", 300, [hands("build", 20), hands("bottle", 20)]);
  const announced = [told("a", "build", 30, 50), told("a", "bottle", 200, 220)];
  expect(starts(keepAnnounced(day([batch], 0, away), announced))).toEqual({
    "a build": 180,
    "a bottle": 200,
  });
});
