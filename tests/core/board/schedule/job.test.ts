import { expect, test } from "vitest";
import { expectJobs, type Job, PERSON, stepUses } from "../../../../core/board/schedule/job.ts";
import { at, hands, job, limits, use, wait } from "./small-days.ts";

test("hands-on work takes one person unless it says how many", () => {
  expect(stepUses(hands("a", 5))).toEqual([use(PERSON, 1)]);
  expect(stepUses(hands("a", 5, { uses: [use("blender", 1)] }))).toEqual([
    use("blender", 1),
    use(PERSON, 1),
  ]);
  expect(stepUses(hands("a", 5, { uses: [use(PERSON, 2)] }))).toEqual([use(PERSON, 2)]);
  expect(stepUses(hands("a", 5, { uses: [use(PERSON, 0)] }))).toEqual([use(PERSON, 0)]);
  expect(stepUses(wait("a", 5, { uses: [use("fridge", 4)] }))).toEqual([use("fridge", 4)]);
});

const fine = job("a", 60, [hands("x", 5), wait("y", 10, { mayWaitBefore: 0 })]);
const steps = (...of: Job["steps"]): readonly Job[] => [{ ...fine, steps: of }];

test("sensible jobs pass, no job does too", () => {
  const held = { ...fine, holds: [{ ...use("stand", 1), fromStep: "x", toStep: "y" }] };
  const taken = [{ ...use("person", 1), from: at(0), to: at(0) }];
  const over = hands("x", 0, { fixedStart: 0 });
  expect(() => expectJobs([held], { ...limits({ stand: 0 }), taken }, at(1))).not.toThrow();
  expect(() => expectJobs(steps(over, wait("y", 1)), limits(), at(1))).not.toThrow();
  expect(() => expectJobs([], { capacity: {} }, 0)).not.toThrow();
});

const hold = (fromStep: string, toStep: string, amount = 1): readonly Job[] => [
  { ...fine, holds: [{ resource: "stand", amount, fromStep, toStep }] },
];

test.each<[string, readonly Job[]]>([
  ["jobs", [fine, fine]],
  ["job a must have a step", steps()],
  ["steps of a", steps(hands("x", 1), wait("x", 1))],
  ["takes must be ms above 0", steps(hands("x", 0))],
  ["takes must be ms above 0", steps(hands("x", Number.NaN))],
  ["an amount", steps(hands("x", 1, { uses: [use("fridge", -1)] }))],
  ["idle time", steps(hands("x", 1), hands("y", 1, { mayWaitBefore: Number.NaN }))],
  ["its start", steps(hands("x", 1, { fixedStart: Number.POSITIVE_INFINITY }))],
  ["begun before an earlier one", steps(hands("x", 1), hands("y", 1, { fixedStart: at(1) }))],
  ["times in epoch ms", [{ ...fine, readyBy: Number.NaN }]],
  ["times in epoch ms", [{ ...fine, earliest: -1 }]],
  ["its own steps", hold("x", "z")],
  ["its own steps", hold("y", "x")],
  ["an amount held", hold("x", "y", -1)],
])("stops at a mistake of ours: %s", (says, jobs) => {
  expect(() => expectJobs(jobs, limits(), at(0))).toThrow(RangeError);
  expect(() => expectJobs(jobs, limits(), at(0))).toThrow(says);
});

test("stops at limits and clocks that make no sense", () => {
  const taken = (from: number, to: number, amount = 1) => ({
    ...limits(),
    taken: [{ resource: "person", amount, from, to }],
  });
  expect(() => expectJobs([], limits({ standing: 1 }), 0)).toThrow("no resource is named standing");
  expect(() => expectJobs([], limits({ fridge: -1 }), 0)).toThrow("capacity of fridge");
  expect(() => expectJobs([], taken(2, 1), 0)).toThrow("got 2 to 1");
  expect(() => expectJobs([], taken(1, 2, Number.NaN), 0)).toThrow("an amount taken");
  expect(() => expectJobs([], limits(), Number.NaN)).toThrow("now must be epoch ms, got NaN");
});
