import { expect, test } from "vitest";
import {
  dayPlanOf,
  type PlacedStep,
  placedSteps,
} from "../../../../core/board/schedule/day-plan.ts";
import { networkOf } from "../../../../core/board/schedule/network.ts";
import { at, hands, job, limits, wait } from "./small-days.ts";

const jobs = [
  job("a", 200, [
    hands("build", 10),
    wait("rest", 60),
    hands("filter", 5, { mayWaitBefore: at(5) }),
  ]),
  job("b", 200, [hands("label", 20)]),
];
const step = (of: string, id: string, from: number, to: number): PlacedStep => ({
  job: of,
  step: id,
  startAt: at(from),
  endAt: at(to),
});
const placed = [
  step("a", "build", 100, 110),
  step("a", "rest", 110, 170),
  step("a", "filter", 170, 175),
  step("b", "label", 110, 130),
];
const span = (from: number, to: number) => ({ from: at(from), to: at(to) });

test("windows that touch become one; before them it is quiet", () => {
  const plan = dayPlanOf(jobs, placed, true, at(50));
  expect(plan.handsOnWindows).toEqual([span(100, 130), span(170, 175)]);
  expect(plan.quietUntil).toBe(at(100));
  expect(plan.nextQuiet).toEqual(span(50, 100));
  expect([plan.late, plan.stood]).toEqual([[], []]);
  expect(plan.latestStart).toEqual([
    { job: "a", startAt: at(100) },
    { job: "b", startAt: at(110) },
  ]);
});

test.each([
  [80, span(80, 100)],
  [81, span(130, 170)],
  [120, span(130, 170)],
  [150, span(150, 170)],
  [151, { from: at(175) }],
  [300, { from: at(300) }],
])("at minute %i the next 20 quiet minutes are %j", (now, quiet) => {
  expect(dayPlanOf(jobs, placed, true, at(now)).nextQuiet).toEqual(quiet);
});

test("nobody is asked for what is over; while somebody is wanted it is not quiet", () => {
  const plan = dayPlanOf(jobs, placed, false, at(120));
  expect(plan.handsOnWindows).toEqual([span(120, 130), span(170, 175)]);
  expect(plan).not.toHaveProperty("quietUntil");
  expect(dayPlanOf(jobs, placed, false, at(130))).toMatchObject({ quietUntil: at(170) });
  expect(dayPlanOf(jobs, placed, false, at(300))).not.toHaveProperty("quietUntil");
});

test("says what is late and what stands too long, but not of what has happened", () => {
  const sooner = jobs.map((one) => ({ ...one, readyBy: at(129) }));
  expect(dayPlanOf(sooner, placed, true, at(0)).late).toEqual([
    { job: "a", byMs: at(46) },
    { job: "b", byMs: at(1) },
  ]);
  expect(dayPlanOf(sooner, placed, true, at(131)).late).toEqual([{ job: "a", byMs: at(46) }]);
  const standing = placed.map((one) =>
    one.step === "filter" ? step("a", "filter", 180, 185) : one,
  );
  expect(dayPlanOf(jobs, standing, true, at(0)).stood).toEqual([
    { job: "a", step: "filter", byMs: at(5) },
  ]);
});

test("what has begun has no latest start: the first step that has not stands for the job", () => {
  const [a, b] = jobs;
  if (a === undefined || b === undefined) throw new RangeError("two jobs");
  const begun = a.steps.map((one, i) => (i < 2 ? { ...one, fixedStart: at(100 + 10 * i) } : one));
  const over = b.steps.map((one) => ({ ...one, fixedStart: at(110) }));
  const now = [
    { ...a, steps: begun },
    { ...b, steps: over },
  ];
  expect(dayPlanOf(now, placed, true, at(130)).latestStart).toEqual([
    { job: "a", startAt: at(170) },
  ]);
});

test("steps are told by job and in order; what is taken is nobody's step", () => {
  const taken = [{ resource: "person", amount: 1, from: at(0), to: at(5) }];
  const network = networkOf(jobs, { ...limits(), taken }, 0);
  const starts = Float64Array.of(at(100), at(110), at(170), at(110), at(0));
  expect(placedSteps(network, starts)).toEqual(placed);
});
